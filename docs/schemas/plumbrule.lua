---@meta
-- What a rule can say and see, for a language server. Made by plumbrule schema stubs.

---@class plumbrule.quantity
---@operator add(plumbrule.quantity): plumbrule.quantity
---@operator sub(plumbrule.quantity): plumbrule.quantity
---@operator mul(plumbrule.quantity|number): plumbrule.quantity
---@operator div(plumbrule.quantity|number): plumbrule.quantity
---@operator unm: plumbrule.quantity

---@class plumbrule.date

---@class plumbrule.word
---@field is fun(self, ...: string): boolean True if it is any of these words.

---@class plumbrule.words
---@field has fun(self, ...: string): boolean True if it has all of these words.
---@field count fun(self): integer

---@class plumbrule.list<T>: { [integer]: T }
---@field count fun(self): integer

---@class plumbrule.book Values of the law by name.
---@field [string] any
---@field edition fun(self, book: string): string The edition in force.

---@class plumbrule.Rule
---@field title string
---@field cite string|table<string, string> The section; or one for each edition.
---@field about string The kind of thing; one finding for each.
---@field applies? fun(thing: any, book: plumbrule.book, design: plumbrule.design): boolean
---@field check fun(thing: any, book: plumbrule.book, design: plumbrule.design)
---@field remedy? string

---@class (exact) plumbrule.design One proposed installation.
---@field title string What people call this design.
---@field catalogue plumbrule.words Names of catalogue files with the equipment used.
---@field project plumbrule.project Whose work it is, and its dates.
---@field site plumbrule.site The ground the house stands on, and its weather.
---@field building plumbrule.building The house.
---@field roof plumbrule.roof The roof as a whole, with its planes.
---@field module_rows plumbrule.list<plumbrule.module_row> Blocks of equal modules.
---@field modules plumbrule.list<plumbrule.module> Modules placed one by one (rows add theirs).
---@field racking plumbrule.racking What holds the modules.
---@field strings plumbrule.list<plumbrule.string> Strings of modules.
---@field branches plumbrule.list<plumbrule.branch> Microinverter branch circuits.
---@field inverters plumbrule.list<plumbrule.inverter> String inverters (microinverters stand in branches).
---@field combiners plumbrule.list<plumbrule.combiner> DC combiners.
---@field circuits plumbrule.list<plumbrule.circuit> Runs of conductors.
---@field service plumbrule.service The service.
---@field panels plumbrule.list<plumbrule.panel> All panelboards from the array up to the service.
---@field disconnects plumbrule.list<plumbrule.disconnect> All disconnecting means.
---@field meters plumbrule.list<plumbrule.meter> All meters.
---@field other_sources plumbrule.list<plumbrule.source> All other power sources on the premises, or none.
---@field interconnection plumbrule.interconnection Where the array's output meets the house.
---@field rapid_shutdown plumbrule.rapid_shutdown How the conductors on the roof are made safe.
---@field grounding plumbrule.grounding Grounding and bonding.
---@field labels plumbrule.list<plumbrule.label> All labels and placards.
---@field papers plumbrule.list<plumbrule.paper> Papers for permit and utility.
---@field jobsite plumbrule.jobsite How the crew works safely.
---@field module_models plumbrule.list<plumbrule.module_model> Models of module.
---@field converter_models plumbrule.list<plumbrule.converter_model> Models of DC-to-DC converter.
---@field inverter_models plumbrule.list<plumbrule.inverter_model> Models of inverter and microinverter.
---@field shutdown_models plumbrule.list<plumbrule.shutdown_model> Models of rapid-shutdown device.
---@field racking_models plumbrule.list<plumbrule.racking_model> Models of racking.
---@field attachment_models plumbrule.list<plumbrule.attachment_model> Models of attachment.
---@field panel_models plumbrule.list<plumbrule.panel_model> Models of panelboard.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field array_weight fun(self): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Weight of the whole array.
---@field array_area fun(self): plumbrule.quantity, number Area of all modules.
---@field array_dead_load fun(self): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Weight of the array per its area.
---@field weight_per_attachment fun(self): plumbrule.quantity, plumbrule.quantity, number Weight of the array per attachment, on average.

---@class (exact) plumbrule.project Whose work it is, and its dates.
---@field address string Where the house stands.
---@field owner string Who owns it.
---@field installer string Who installs.
---@field installer_license string The installer's license.
---@field designer string Who designed it.
---@field permit_number string The permit, once there is one.
---@field permit_application_date plumbrule.date When the permit is applied for; the rules of that day hold.
---@field planned_start plumbrule.date When work is to begin.
---@field scope plumbrule.words What the work takes in.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.site The ground the house stands on, and its weather.
---@field exposure plumbrule.word Wind exposure category of the terrain around.
---@field elevation plumbrule.quantity Height of the ground above sea level.
---@field risk_category plumbrule.word Risk category of the building.
---@field topographic_factor number Wind speed-up over hills, Kzt; 1 on flat ground.
---@field snow_exposure plumbrule.word How the roof stands to the wind that clears snow.
---@field design_low_temperature plumbrule.quantity Extreme annual mean minimum dry-bulb temperature of the place.
---@field design_high_temperature plumbrule.quantity 2 % design high dry-bulb temperature of the place.
---@field ground_snow_load plumbrule.quantity Ground snow load found for this very site, where the book asks for a site study.
---@field basic_wind_speed plumbrule.quantity Wind speed found for this very site, where the book asks for a site study.
---@field distance_to_shore plumbrule.quantity Distance to the nearest open shore.
---@field wind_borne_debris_region boolean Does the site lie in a wind-borne debris region?
---@field special_wind_region boolean Does the site lie in a special wind region of the map?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.building The house.
---@field dwelling_units integer How many dwelling units it holds.
---@field occupancy plumbrule.word What it is used for.
---@field stories integer Stories above grade.
---@field eave_height plumbrule.quantity Height of the lowest eave above the ground.
---@field mean_roof_height plumbrule.quantity Mean roof height above the ground.
---@field length plumbrule.quantity Longer side in plan.
---@field width plumbrule.quantity Shorter side in plan (least horizontal dimension).
---@field sprinklers plumbrule.word Automatic sprinklers throughout.
---@field enclosure plumbrule.word Enclosure class for wind.
---@field heated boolean Is it heated in winter?
---@field ventilated_attic boolean Is the roof ventilated below its deck (a cold roof)?
---@field roof_operations boolean Would the fire department cut the roof to ventilate? The official's determination.
---@field year_built integer Year it was built.
---@field escape_openings plumbrule.list<plumbrule.escape_opening> Escape openings that give onto a roof.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.escape_opening An emergency escape and rescue opening that gives onto a roof.
---@field plane plumbrule.roof_plane|nil The roof plane below the opening.
---@field width plumbrule.quantity Width of the opening.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field clear_below fun(self, width: any): boolean, any Is the roof straight below the opening free of modules?
---@field clear_width_below fun(self): plumbrule.quantity Width straight below the opening free of modules and obstructions.

---@class (exact) plumbrule.roof The roof as a whole.
---@field shape plumbrule.word Shape of the roof for wind.
---@field fire_class plumbrule.word Fire class that is asked of this roof, by the town or for its place; unrated where none is.
---@field planes plumbrule.list<plumbrule.roof_plane> All planes of the roof, with or without modules.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field plan_area fun(self): plumbrule.quantity Area of all planes in plan.
---@field array_area fun(self): plumbrule.quantity Area of all modules on the surface, each spot once.
---@field covered_plan_area fun(self): plumbrule.quantity Area of all modules in plan.
---@field covered_share fun(self): number Share of a building's whole roof that modules cover, in plan: the largest of all buildings.
---@field pathway_planes fun(self, width: any, side?: any): number, any, number, any Planes of the building with modules that have a strip of a width from eave to ridge; of the house where what stands apart has modules, too.

---@class (exact) plumbrule.roof_plane One flat piece of the roof.
---@field edges plumbrule.words Kind of each edge, one per side of the outline: the first runs from its first corner to its second.
---@field slope plumbrule.quantity Slope: 4/12 or 18.4°.
---@field azimuth plumbrule.quantity Compass direction the plane falls towards, clockwise from north.
---@field structure plumbrule.word What the plane covers.
---@field detached boolean Does an open structure below it (carport, shade structure) stand apart from every enclosed building?
---@field faces plumbrule.words Which sides of the lot its eave faces.
---@field covering plumbrule.word What it is covered with.
---@field covering_fire_class plumbrule.word Fire class of the covering.
---@field layers integer Layers of covering.
---@field age plumbrule.quantity Age of the covering.
---@field deck plumbrule.word Deck below the covering.
---@field deck_thickness plumbrule.quantity Thickness of the deck.
---@field dead_load plumbrule.quantity Weight of the roof itself per area of its surface, without the array.
---@field eave_overhang plumbrule.quantity How far the eave stands out past the wall, in plan.
---@field sheds_onto_lower_roof boolean Would snow slide from it onto a lower roof, an exit or a meter?
---@field snow_guards boolean Are there snow guards?
---@field framing plumbrule.framing What carries it.
---@field obstructions plumbrule.list<plumbrule.obstruction> What stands on it.
---@field modules plumbrule.list<plumbrule.module> Modules that lie on it.
---@field attachments plumbrule.list<plumbrule.attachment> Attachments that stand on it.
---@field rails plumbrule.list<plumbrule.rail> Rails that lie on it.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field array_weight fun(self): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Weight of the array on the plane.
---@field array_area fun(self): plumbrule.quantity, number Area of the modules on the plane.
---@field array_dead_load fun(self): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Weight of the array on the plane per its area.
---@field least_dead_load fun(self): plumbrule.quantity What covering and deck of the plane weigh at least.
---@field building_pathways fun(self, width: any, side?: any): number, any, number, any Planes of the same building that have a strip of a width from eave to ridge.
---@field building_share fun(self): number Share of the whole roof of its building that modules cover, in plan.
---@field stands_apart fun(self): boolean Does it cover what stands apart from the house, as a detached garage?
---@field meets_house fun(self): boolean, any Is it told to stand apart, and a roof of the house within a foot of it?
---@field module_count fun(self): number Modules that lie on it when the work is done: none to be removed.
---@field area fun(self): plumbrule.quantity Area on the surface.
---@field plan_area fun(self): plumbrule.quantity Area in plan.
---@field covered_area fun(self): plumbrule.quantity Area of its modules on the surface.
---@field covered_plan_area fun(self): plumbrule.quantity Area of its modules in plan.
---@field has_edge fun(self, edge: any): boolean Has the plane an edge of a kind?
---@field edge_is_met fun(self, edge: any): boolean Does another plane meet each of its edges of a kind in plan?
---@field edges_agree fun(self): boolean, any, any, any Do planes that share a ridge, hip or valley in plan name it alike?
---@field walls_are_met fun(self): boolean Is a roof drawn beyond each of its walls, within a foot in plan?
---@field eave_above fun(self): boolean, any Does an eave of another plane run over it in plan, or end above its wall?
---@field roof_below fun(self): boolean, any Does an eave of it run over another plane in plan, or end above its wall?
---@field clearance fun(self, edge: any): plumbrule.quantity, any Least distance from any module to the edges of a kind.
---@field clearance_to_obstructions fun(self, kind?: any): plumbrule.quantity, any, any Least distance from any module to an obstruction.
---@field modules_over_edge fun(self): number, any Modules that stand out past the outline.
---@field modules_over_obstructions fun(self): number, any, any Modules that stand over an obstruction.
---@field modules_overlapping fun(self): number, any, any Pairs of modules that lie over each other.
---@field pathway_width fun(self): plumbrule.quantity, plumbrule.quantity Widest strip from eave to ridge free of modules and obstructions.
---@field pathway_count fun(self, width: any): number How many strips of a width run from eave to ridge.
---@field pathway_faces fun(self, width: any, side: any): boolean Is there a strip of a width, and does the plane face a side?
---@field adjacent_pathway_width fun(self, across?: any): plumbrule.quantity, any Widest strip on a plane that shares an edge with this one.
---@field straddling_pathway_width fun(self, across?: any): plumbrule.quantity, any Widest strip on this plane and an adjacent one taken together, their shared edge no bar.
---@field section_count fun(self, gap: any): number Sections of the array.
---@field largest_section_length fun(self, gap: any): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Reach of the largest section of the array.
---@field gap_between_sections fun(self, gap: any): plumbrule.quantity Least distance of two sections of the array.
---@field supported_area fun(self): plumbrule.quantity, plumbrule.quantity, any Module area that attachments carry; the whole array's if all is held.
---@field unsupported_modules fun(self): number, any Modules that no attachment carries.
---@field modules_short_of_rails fun(self, rails: any): number, any Modules with fewer rails below them, or without rails fewer attachments at them, than are asked for.
---@field past_rails fun(self, rails: any): plumbrule.quantity, any How far a module stands out past the ends of the rails below it.
---@field largest_rail_overhang fun(self): number, plumbrule.quantity, any How far a module stands out past the outermost rail below it.
---@field least_rail_spread fun(self): number, plumbrule.quantity, any, plumbrule.quantity How near together the rails below a module lie.
---@field array_wind_down fun(self, edition: any, speed: any, minimum?: any): plumbrule.quantity, number, plumbrule.quantity Largest wind towards the roof on what any attachment of the plane carries, ultimate.
---@field find_wind fun(self, edition: any): boolean Whether wind on the plane's array is covered by the figures at hand; else a person judges.
---@field has_wind fun(self, edition: any): boolean The same as yes or no, for rules that go on without wind.
---@field snow_load fun(self, edition: any, basis: any, ground_snow: any, minimum?: any): plumbrule.quantity, plumbrule.quantity, number Balanced snow on the plane.
---@field unbalanced_snow fun(self, edition: any, basis: any, ground_snow: any): plumbrule.quantity, plumbrule.quantity, boolean, plumbrule.quantity Snow that wind has moved onto the plane.
---@field drifted_snow fun(self, edition: any, basis: any, ground_snow: any): plumbrule.quantity, plumbrule.quantity, boolean, plumbrule.quantity The same for rules that go on without it: not needed where it is not at hand.
---@field rafter_reach fun(self): plumbrule.quantity How far its rafters reach from its eave to its highest edge.

---@class (exact) plumbrule.obstruction A thing that stands on a roof plane.
---@field kind plumbrule.word What it is.
---@field width plumbrule.quantity Its size along the eave.
---@field length plumbrule.quantity Its size up the slope.
---@field height plumbrule.quantity How far it stands above the roof.
---@field guarded boolean Is it guarded against falls (a skylight)?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.framing What carries a roof plane.
---@field kind plumbrule.word Kind of member.
---@field size plumbrule.word Nominal size.
---@field species plumbrule.word Wood species combination.
---@field grade plumbrule.word Lumber grade.
---@field spacing plumbrule.quantity Spacing on center.
---@field span plumbrule.quantity Clear span in horizontal projection.
---@field first_at plumbrule.quantity Where the first member stands: its x in the plane's coordinates.
---@field held_between boolean Do purlins, walls or struts carry it between wall and ridge, and the drawings show what these stand on? Asked of rafters that span much less than that way.
---@field ceiling_attached boolean Does a ceiling hang on the members?
---@field lower_edge_bracing plumbrule.quantity Largest distance between what holds the lower edge sideways, such as blocking or braces; asked where wind lifts a deep member hard.
---@field condition plumbrule.word What a look at them shows.
---@field wet_service boolean Is the wood wet in service?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field bending fun(self, load: any, load_duration: any, basis?: any, drift?: any, reach?: any): plumbrule.quantity, plumbrule.quantity, number, plumbrule.quantity Bending of its rafters under an even load.
---@field shear fun(self, load: any, load_duration: any, basis?: any, drift?: any, reach?: any): plumbrule.quantity, plumbrule.quantity, number, plumbrule.quantity Shear in its rafters under an even load.
---@field deflection fun(self, load: any, deflection_limit: any): plumbrule.quantity, plumbrule.quantity, number Deflection of its rafters under an even load.
---@field allowable_span fun(self, live: any, dead: any, load_duration: any, deflection_limit: any, basis?: any): plumbrule.quantity, any, plumbrule.quantity, plumbrule.quantity, plumbrule.quantity How far its rafters may span.
---@field under_array fun(self, roof_load: any, load_duration: any, attachment_load?: any, array_load?: any, basis?: any, drift?: any, reach?: any): plumbrule.quantity, plumbrule.quantity, number, plumbrule.quantity, plumbrule.quantity, plumbrule.quantity, number, number The most loaded member, each attachment a point load on the one below it.
---@field under_uplift fun(self, edition: any, speed: any, roof_dead: any, array_dead: any, minimum?: any): plumbrule.quantity, plumbrule.quantity, number, plumbrule.quantity, plumbrule.quantity The most bent member where wind on the array pulls at each attachment.
---@field array_share fun(self): number, number How much of the array comes to one of its rafters or trusses.
---@field wind_down fun(self, edition: any, speed: any, minimum?: any): plumbrule.quantity, number, plumbrule.quantity Wind towards the roof on its rafters without the array, ultimate.

---@class (exact) plumbrule.module One photovoltaic module where it lies.
---@field model plumbrule.module_model|nil Its model.
---@field plane plumbrule.roof_plane|nil The plane it lies on.
---@field orientation plumbrule.word Long side up the slope (portrait) or along the eave (landscape).
---@field status plumbrule.word New, existing or removed.
---@field strings plumbrule.list<plumbrule.string> The string it is in.
---@field branches plumbrule.list<plumbrule.branch> The branch it is in.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field area fun(self): plumbrule.quantity Area of the module.
---@field edge_distance fun(self, edge?: any): plumbrule.quantity Least distance to the edges of its plane.
---@field neighbour_distance fun(self): plumbrule.quantity, any Distance to the nearest other module.
---@field zone fun(self, scheme: any, width: any, corner?: any, inner?: any): any The worst wind zone it reaches into.
---@field wind_pressure fun(self, edition: any, speed: any, minimum?: any, share?: any): plumbrule.quantity, plumbrule.quantity, any, plumbrule.quantity, boolean, number Wind on the module where it lies, ultimate level.
---@field below_ridge fun(self): plumbrule.quantity How far below the ridge it begins.

---@class (exact) plumbrule.module_row A block of equal modules; each becomes a module named ROW-r-c.
---@field model plumbrule.module_model|nil Their model.
---@field plane plumbrule.roof_plane|nil The plane they lie on.
---@field orientation plumbrule.word Long side up the slope (portrait) or along the eave (landscape).
---@field columns integer Modules along the eave.
---@field rows integer Modules up the slope.
---@field gap plumbrule.quantity Gap between neighbours, both ways.
---@field status plumbrule.word New, existing or removed.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.racking What holds the modules.
---@field model plumbrule.racking_model|nil Its model.
---@field mounting plumbrule.word How it holds the modules.
---@field rail_direction plumbrule.word Which way rails run.
---@field rails_per_module integer Rails below each module.
---@field rail_spacing plumbrule.quantity Distance between the rails of a module.
---@field attachment_spacing plumbrule.quantity Distance between attachments along a rail.
---@field cantilever plumbrule.quantity How far a rail stands out past its last attachment.
---@field height_above_roof plumbrule.quantity Top of the modules above the roof surface.
---@field gap_below_modules plumbrule.quantity Clear space between roof and modules.
---@field module_gap plumbrule.quantity Gap between neighbouring modules.
---@field tilt plumbrule.quantity Tilt of the modules against the roof; 0° is parallel.
---@field weight plumbrule.quantity Weight of all racking.
---@field system_fire_class plumbrule.word Fire class of racking and module type together.
---@field attachment_model plumbrule.attachment_model|nil Model of its attachments.
---@field rails plumbrule.list<plumbrule.rail> Rails.
---@field attachments plumbrule.list<plumbrule.attachment> Attachments placed one by one (rows add theirs).
---@field attachment_rows plumbrule.list<plumbrule.attachment_row> Rows of equal attachments.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.rail One rail.
---@field plane plumbrule.roof_plane|nil The plane it lies on.
---@field length plumbrule.quantity Its length, along the eave or up the slope as the racking says.
---@field attachments plumbrule.list<plumbrule.attachment> Attachments that carry it.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field largest_span fun(self): plumbrule.quantity Largest distance of two neighbouring attachments.
---@field cantilever fun(self): plumbrule.quantity How far it stands out past its last attachment.

---@class (exact) plumbrule.attachment One attachment where it stands.
---@field model plumbrule.attachment_model|nil Its model.
---@field plane plumbrule.roof_plane|nil The plane it stands on.
---@field rail plumbrule.rail|nil The rail it carries.
---@field stands_on plumbrule.word What its fastener goes into.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field uplift_capacity fun(self, load_duration: any, temperature?: any, safety_factor?: any): plumbrule.quantity, any, plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Allowable uplift where it stands: the least of fasteners and tested mount.
---@field lateral_capacity fun(self, load_duration: any, temperature?: any, safety_factor?: any, push: any): plumbrule.quantity, any, plumbrule.quantity, plumbrule.quantity Allowable load along the roof where it stands: the least of its screws and tested mount.
---@field down_capacity fun(self, safety_factor?: any): plumbrule.quantity Allowable load downward where it stands.
---@field off_member fun(self): plumbrule.quantity, plumbrule.quantity, number How far it stands from the nearest member.
---@field zone fun(self, scheme: any, width: any, corner?: any, inner?: any): any The wind zone it stands in.
---@field member_distance fun(self): plumbrule.quantity, plumbrule.quantity Distance to the nearest rafter or truss.
---@field tributary_area fun(self): plumbrule.quantity Module area that it carries.
---@field wind_pressure fun(self, edition: any, speed: any, minimum?: any): plumbrule.quantity, plumbrule.quantity, any, plumbrule.quantity, boolean, number Wind on the part of the array that the attachment carries, ultimate level.
---@field below_ridge fun(self): plumbrule.quantity How far below the ridge the modules that it carries begin.

---@class (exact) plumbrule.attachment_row A row of equal attachments; each becomes an attachment named ROW-n.
---@field model plumbrule.attachment_model|nil Their model.
---@field plane plumbrule.roof_plane|nil The plane they stand on.
---@field rail plumbrule.rail|nil The rail they carry.
---@field spacing plumbrule.quantity Distance from one to the next along the rail.
---@field count integer How many.
---@field stands_on plumbrule.word What their fasteners go into.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.string Modules in series on one inverter input, with or without DC-to-DC converters.
---@field modules plumbrule.list<plumbrule.module|plumbrule.module_row> Its modules, in order; the name of a row stands for all of them.
---@field converter plumbrule.converter_model|nil Model of the DC-to-DC converters below its modules.
---@field modules_per_converter integer Modules on one converter.
---@field has_converters boolean Are there DC-to-DC converters in it?
---@field inverter plumbrule.inverter|nil The inverter it feeds.
---@field input integer Which tracking input of the inverter.
---@field combiner plumbrule.combiner|nil The combiner it goes through, if any.
---@field fuse plumbrule.quantity Rating of the fuse in it.
---@field fused boolean Is there an overcurrent device in it?
---@field connectors_listed_together boolean Are the differing connectors that mate in it listed for each other?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field module_count fun(self): number Its modules.
---@field power fun(self): plumbrule.quantity Sum of its modules' rated power.
---@field cold_voltage fun(self, temperature: any): plumbrule.quantity Open-circuit voltage of its modules in series in the cold.
---@field maximum_voltage fun(self, temperature: any): plumbrule.quantity Its largest voltage, with or without converters.
---@field hot_voltage fun(self, temperature: any, rise?: any): plumbrule.quantity Voltage of its modules at maximum power in the heat.
---@field short_circuit_current fun(self): plumbrule.quantity Short-circuit current of its strongest module.
---@field source_current fun(self): plumbrule.quantity Largest current: 125 % of short circuit, or its converters' output.
---@field operating_current fun(self): plumbrule.quantity Current at maximum power, or power over the converters' string voltage.
---@field converter_count fun(self): number Its converters; 0 where it has none.
---@field converter_voltage fun(self, temperature: any): plumbrule.quantity Largest voltage of modules on one converter in the cold.
---@field converter_power fun(self): plumbrule.quantity Largest power of modules on one converter.
---@field held_voltage fun(self): plumbrule.quantity Voltage at which its converters hold it: theirs, else the inverter's.
---@field backfeed_current fun(self): plumbrule.quantity Largest current from all strings in parallel with it.

---@class (exact) plumbrule.branch Microinverters in parallel on one AC branch circuit.
---@field modules plumbrule.list<plumbrule.module|plumbrule.module_row> Modules of its microinverters.
---@field microinverter plumbrule.inverter_model|nil Model of its microinverters.
---@field microinverters integer How many microinverters.
---@field breakers plumbrule.list<plumbrule.breaker> The breaker it is on.
---@field connectors_listed_together boolean Are the differing connectors that mate in it listed for each other?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field count fun(self): number Its microinverters.
---@field output_current fun(self): plumbrule.quantity Marked output current of all its microinverters.
---@field opened_by fun(self, role: any): boolean Does a disconnect of this role take it off all other wiring?

---@class (exact) plumbrule.inverter One string inverter where it hangs.
---@field model plumbrule.inverter_model|nil Its model.
---@field status plumbrule.word New, existing or removed.
---@field location plumbrule.word Where it hangs.
---@field readily_accessible boolean Can one reach it without climbing or removing anything?
---@field distance_to_array plumbrule.quantity Along the conductors, from the array.
---@field working_space plumbrule.working_space The clear space before it.
---@field strings plumbrule.list<plumbrule.string> Strings that feed it.
---@field breakers plumbrule.list<plumbrule.breaker> The breaker it is on.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field output_current fun(self): plumbrule.quantity Marked output current.
---@field input_current fun(self, input: any): plumbrule.quantity Operating current at one tracking input.
---@field short_circuit_current fun(self, input: any): plumbrule.quantity Short-circuit current at one tracking input, without 125 %.
---@field string_count fun(self, input: any): number Strings on one tracking input.
---@field array_power fun(self): plumbrule.quantity Rated power of all modules that feed it.
---@field opened_by fun(self, role: any): boolean Does a disconnect of this role take it off all other wiring?

---@class (exact) plumbrule.combiner A DC combiner of strings.
---@field fuse plumbrule.quantity Rating of each string's fuse.
---@field rating plumbrule.quantity Rated output current.
---@field voltage_rating plumbrule.quantity Rated voltage.
---@field listings plumbrule.words Standards it is listed to.
---@field location plumbrule.word Where it is.
---@field enclosure_type plumbrule.word Type number marked on its enclosure, which says what weather it stands.
---@field isolation plumbrule.word What takes its fuses off all other conductors, in the combiner itself.
---@field strings plumbrule.list<plumbrule.string> Strings in it.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.circuit One run of conductors.
---@field role plumbrule.word What it carries.
---@field carries plumbrule.list<plumbrule.string|plumbrule.branch|plumbrule.inverter|plumbrule.combiner|plumbrule.panel|plumbrule.source> What its current comes from (or which panel a feeder feeds).
---@field from plumbrule.string|plumbrule.branch|plumbrule.inverter|plumbrule.combiner|plumbrule.circuit|plumbrule.panel|plumbrule.busbar|plumbrule.disconnect|plumbrule.meter|plumbrule.source|nil Where it begins, on the array's side.
---@field to plumbrule.inverter|plumbrule.combiner|plumbrule.circuit|plumbrule.panel|plumbrule.busbar|plumbrule.disconnect|plumbrule.meter|nil Where it ends, on the utility's side.
---@field nominal_voltage plumbrule.quantity Nominal or operating voltage.
---@field conductor_size plumbrule.word Size of its ungrounded conductors.
---@field conductor_material plumbrule.word Their material.
---@field insulation plumbrule.word Their insulation.
---@field insulation_temperature plumbrule.quantity Temperature rating of the insulation.
---@field conductor_diameter plumbrule.quantity Overall diameter of each conductor, where no table has it (PV wire).
---@field conductors integer All conductors in its raceway, grounding conductor and those of other circuits included.
---@field current_carrying_conductors integer Current-carrying conductors in its raceway, those of other circuits included.
---@field parallel_sets integer Conductors in parallel per pole.
---@field egc_size plumbrule.word Size of its equipment grounding conductor.
---@field egc_material plumbrule.word Its material.
---@field neutral plumbrule.word What its neutral is for: none, only for a source to sense or to talk, or to carry load.
---@field neutral_size plumbrule.word Size of its neutral, if any.
---@field wiring_method plumbrule.word Raceway or cable.
---@field raceway_size plumbrule.word Trade size of the raceway.
---@field raceway_of plumbrule.circuit|nil The circuit in whose raceway it runs, where several share one: all name the one that has it, and that one names none.
---@field raceway_guests plumbrule.list<plumbrule.circuit> Circuits that run in its raceway.
---@field length plumbrule.quantity One-way length.
---@field ambient_temperature plumbrule.quantity Ambient temperature along its hottest stretch, before any rooftop adder.
---@field on_roof boolean Does it run on a roof in sunlight?
---@field height_above_roof plumbrule.quantity Height of its bottom above the roof.
---@field ridge_distance plumbrule.quantity Least distance of its run on the roof to a ridge, hip or valley.
---@field inside_building boolean Does it run inside the building?
---@field length_inside plumbrule.quantity How much of it runs inside.
---@field support_spacing plumbrule.quantity Distance between supports.
---@field in_sunlight boolean Is it exposed to sunlight?
---@field sunlight_resistant boolean Is its cable marked sunlight resistant?
---@field dc_and_ac_separated boolean Is it apart from circuits of the other kind?
---@field shares_with plumbrule.word What else is in its raceway, cable or boxes without a partition, the farthest from it: control circuits of the PV system, an inverter's output, circuits of other systems.
---@field identified boolean Are its conductors grouped, and marked with their circuit and polarity, at every box, splice and terminal?
---@field ocpd plumbrule.word What protects it.
---@field ocpd_rating plumbrule.quantity Rating of that device.
---@field ocpd_dc_rated boolean Is the device listed for DC in PV systems?
---@field ocpd_ends integer At how many ends it is protected.
---@field ocpd_distance plumbrule.quantity Conductor length from the tap to its overcurrent device.
---@field terminal_temperature plumbrule.quantity Lower temperature rating of its two terminations.
---@field taps plumbrule.circuit|plumbrule.panel|nil The feeder it taps.
---@field ampacity plumbrule.quantity Ampacity where a maker (trunk cable) or an engineer states it; a table's figure bounds it.
---@field status plumbrule.word New, existing or removed.
---@field listings plumbrule.words Standards the cable is listed to.
---@field connector string DC connector on its end at the inverter, where the inverter has connectors; none where its conductors end on terminals.
---@field connectors_listed_together boolean Is that connector, if it differs from the inverter's, listed for it?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field design_current fun(self): plumbrule.quantity The largest current it carries, by what it carries, without 125 %.
---@field largest_voltage fun(self): plumbrule.quantity What it is told to run at, or the largest of its strings where that is more.
---@field terminal_ampacity fun(self): plumbrule.quantity The uncorrected column at its terminals.
---@field corrected_ampacity fun(self, edition: any): plumbrule.quantity Its ampacity after corrections.
---@field usable_ampacity fun(self, edition: any): plumbrule.quantity The smaller of the corrected ampacity and its terminals' column.
---@field needed_ocpd fun(self, edition: any): plumbrule.quantity The next standard size up of 125 % of its current.
---@field largest_ocpd fun(self, edition: any): plumbrule.quantity The largest device that protects its conductors.
---@field smallest_size fun(self, edition: any): any The smallest size that serves where it runs.
---@field needed_egc fun(self, edition: any): any The equipment grounding conductor it needs.
---@field voltage_drop fun(self): number, plumbrule.quantity Voltage lost along it.
---@field carrying_conductors fun(self): number Current-carrying conductors in its raceway, those of circuits that share it included.
---@field fill fun(self): number How full its raceway is.
---@field fill_limit fun(self): number How full its raceway may be.
---@field feeder_source_current fun(self): plumbrule.quantity Sources that feed this feeder: behind its panel, or tapping it.
---@field feeder_need fun(self): plumbrule.quantity Its own device plus 125 % of the sources that feed it.
---@field tap_need fun(self, edition: any): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity What a tap of a feeder must carry.
---@field supply_side_need fun(self, edition: any): plumbrule.quantity, boolean, any What conductors on the supply side must be.

---@class (exact) plumbrule.service The service, from the utility to the service disconnect.
---@field rating plumbrule.quantity Rating of the service.
---@field disconnect_rating plumbrule.quantity Rating of the service disconnect.
---@field voltage plumbrule.quantity Nominal voltage between ungrounded conductors.
---@field voltage_to_ground plumbrule.quantity Nominal voltage to ground.
---@field phases integer Phases.
---@field conductor_size plumbrule.word Size of the service conductors.
---@field conductor_material plumbrule.word Their material.
---@field parallel_sets integer Service conductors in parallel per pole.
---@field conductor_ampacity plumbrule.quantity Their ampacity, all in parallel together; the table's figure bounds it.
---@field available_fault_current plumbrule.quantity Available fault current at the service, from the utility.
---@field work plumbrule.word What happens to the service in this project.
---@field like_for_like boolean Does the work leave its rating and its loads as they were?
---@field surge_protection boolean Is there a surge-protective device?
---@field emergency_disconnect boolean Is there an emergency disconnect outside?
---@field load_calculation plumbrule.load_calculation What its loads add up from.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field is_renewed fun(self): boolean Is there work on the service, or a new panel at it?
---@field source_current_sum fun(self): plumbrule.quantity Output current of all sources, on either side of the service disconnect.
---@field source_rating_sum fun(self): plumbrule.quantity Ratings of the devices at all sources, on either side of the service disconnect.

---@class (exact) plumbrule.load_calculation What the dwelling's loads add up from.
---@field floor_area plumbrule.quantity Floor area.
---@field small_appliance_circuits integer Small-appliance circuits.
---@field laundry_circuits integer Laundry circuits.
---@field appliances plumbrule.quantity Nameplate sum of fastened appliances, ranges, ovens, dryers, water heaters.
---@field motors plumbrule.quantity Nameplate sum of motors not among them.
---@field heating plumbrule.quantity Electric heating (largest of the alternatives).
---@field cooling plumbrule.quantity Air conditioning or heat pump.
---@field ev_charging plumbrule.quantity Electric vehicle supply equipment.
---@field existing_peak plumbrule.quantity Largest demand metered over the past year.
---@field adds_air_conditioning boolean Is heating or air conditioning added (an existing dwelling)?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field optional fun(self, edition?: any): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Load by the optional method, heating taken as central.
---@field existing fun(self, edition?: any): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Load of an existing dwelling, heating taken as central.
---@field metered fun(self): plumbrule.quantity Load by a year's metered peak.

---@class (exact) plumbrule.panel One panelboard.
---@field model plumbrule.panel_model|nil Its model.
---@field fed_from plumbrule.panel|plumbrule.busbar|nil The panel that feeds it.
---@field is_service_panel boolean Is it fed straight from the service?
---@field feeder plumbrule.circuit|nil The conductors that feed it.
---@field status plumbrule.word New, existing or removed.
---@field location plumbrule.word Where it is.
---@field enclosure_type plumbrule.word Type number marked on its enclosure, which says what weather it stands.
---@field readily_accessible boolean Can one reach its breakers without climbing or removing anything?
---@field handle_height plumbrule.quantity Height of the middle of its highest breaker's handle, above the floor or platform one stands on.
---@field detached_building boolean Is it in another building than the service?
---@field main_lugs_only boolean Has it no main breaker of its own?
---@field split_bus boolean Is its bus split?
---@field spaces integer Spaces for breakers.
---@field free_spaces integer Spaces still free.
---@field takes_tandems boolean Is it listed for tandem breakers?
---@field interrupting_rating plumbrule.quantity Interrupting rating of its devices.
---@field series_rated boolean Are its breakers a listed series combination with its main or the device ahead of it?
---@field taps_allowed boolean Do its maker's instructions allow taps (a meter-main)?
---@field working_space plumbrule.working_space The clear space before it.
---@field busbars plumbrule.list<plumbrule.busbar> Its buses.
---@field breakers plumbrule.list<plumbrule.breaker> The breaker that feeds it.
---@field own_electrodes boolean Has its building grounding electrodes of its own (a detached building)?
---@field electrodes plumbrule.words Electrodes of its building, where that is a detached one.
---@field rods integer Rods, pipes and plates among them.
---@field rod_spacing plumbrule.quantity Least distance between two of those.
---@field rod_resistance plumbrule.quantity Measured resistance to earth of a lone rod, pipe or plate.
---@field neutral_bonded boolean Is its neutral bonded to ground in it?
---@field entrance_run plumbrule.quantity How far its feeder runs inside a detached building before the disconnect there; 0 ft where that is outside, or where the feeder comes in.
---@field dwelling boolean Is there a dwelling unit in that detached building?
---@field surge_protection boolean Is a surge-protective device in it or right beside it? Asked of new panels that a feeder supplies.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field source_current fun(self): plumbrule.quantity Output current of every source that can feed any of its buses.
---@field is_between_array_and_service fun(self): boolean Is any source behind it?
---@field path_up fun(self): number, any The panels between it and the service.
---@field mains fun(self): number Main breakers on its buses that stay.
---@field needed_spaces fun(self): number Spaces that its new breakers take.
---@field crowded_spaces fun(self): number, number, number Spaces that the design gives to more breakers than they hold.

---@class (exact) plumbrule.busbar One bus of a panelboard, with the device that protects it.
---@field rating plumbrule.quantity Rating of the bus.
---@field protecting_device plumbrule.quantity Rating of the overcurrent device that protects the bus.
---@field fed_at plumbrule.word Where it is fed.
---@field feed_through boolean Has it feed-through lugs in use?
---@field methods plumbrule.words Options that the design claims by name: sum of breakers, feed-through conductors, power control system, engineered.
---@field power_control_limit plumbrule.quantity Current to which a listed power control system holds the sources.
---@field breakers plumbrule.list<plumbrule.breaker> All breakers on it, spare ones left out.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field source_current fun(self): plumbrule.quantity Output current of every source that can feed it, without 125 %.
---@field controlled_current fun(self): plumbrule.quantity The same, held to the limit of a power control system that the design names.
---@field source_breaker_total fun(self): plumbrule.quantity Ratings of its breakers that have sources behind them.
---@field breaker_total fun(self): plumbrule.quantity Ratings of all its load, source and feeder breakers, without main and spare ones; a tandem is written as two breakers.
---@field has_sources fun(self): boolean Can any source feed it?
---@field source_breaker_place fun(self): any Where its breakers with sources stand: at the opposite end only if all do.
---@field sources_at_both_ends fun(self): boolean Do breakers with sources stand in both halves of the panel (center-fed)?
---@field largest_source_current fun(self): plumbrule.quantity, plumbrule.quantity Largest source current that its rating and its device leave.

---@class (exact) plumbrule.breaker One overcurrent device on a bus.
---@field duty plumbrule.word Main, load, source or feeder.
---@field rating plumbrule.quantity Its rating.
---@field poles integer Its poles.
---@field position integer The number of its space, of several the lowest, as panels print them: odd ones on one side and even ones on the other, 1 and 2 nearest to the feed (count them so where the print begins elsewhere; as printed on a bus fed in its middle). A breaker of two poles takes the next of its side, too: 5 and 7.
---@field place plumbrule.word Where it stands on the bus.
---@field serves plumbrule.branch|plumbrule.inverter|plumbrule.panel|plumbrule.source|nil What is behind it; none for an ordinary load.
---@field suitable_for_backfeed boolean May it be backfed (not marked line and load)?
---@field fastened_in_place boolean Is it fastened in place?
---@field listed_for_panel boolean Is it listed for this panel?
---@field tandem boolean Is it a tandem?
---@field protection plumbrule.word Arc-fault or ground-fault protection in it.
---@field protection_listed_for_backfeed boolean Is that protection listed for backfeed?
---@field interrupting_rating plumbrule.quantity Its interrupting rating.
---@field status plumbrule.word New, existing or removed.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field source_current fun(self): plumbrule.quantity, plumbrule.quantity Output current of the sources behind it.
---@field has_sources fun(self): boolean Is any source behind it?

---@class (exact) plumbrule.disconnect One disconnecting means.
---@field role plumbrule.word What it disconnects.
---@field of plumbrule.string|plumbrule.branch|plumbrule.inverter|plumbrule.combiner|plumbrule.panel|plumbrule.source|nil Whose disconnect it is.
---@field rating plumbrule.quantity Its current rating.
---@field voltage_rating plumbrule.quantity Its voltage rating.
---@field location plumbrule.word Where it is.
---@field enclosure_type plumbrule.word Type number marked on its enclosure, which says what weather it stands.
---@field readily_accessible boolean Can one reach it without climbing or removing anything?
---@field handle_height plumbrule.quantity Height of the middle of its highest handle's grip, above the floor or platform one stands on.
---@field locked_or_tool boolean Does its door lock or need a tool?
---@field lockable boolean Can it be locked open?
---@field visible_open boolean Are its open contacts visible?
---@field load_break boolean Is it rated to break its load?
---@field service_rated boolean Is it suitable for use as service equipment?
---@field within_sight boolean Is it within sight of the equipment?
---@field distance plumbrule.quantity Distance from the equipment it isolates.
---@field remote_control boolean Can a control beside the equipment open it from there?
---@field control_distance plumbrule.quantity Distance of that control from the equipment.
---@field distance_to_meter plumbrule.quantity Distance from the utility meter.
---@field count integer Switches or breakers in this group.
---@field poles integer Its poles; on the DC side each string has two of its own where there are enough.
---@field interrupting_rating plumbrule.quantity Its interrupting rating.
---@field working_space plumbrule.working_space The clear space before it.
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.meter One meter.
---@field revenue boolean Is it the utility's revenue meter?
---@field meter_main boolean Is it in one enclosure with the service disconnect?
---@field rating plumbrule.quantity Rating of its socket.
---@field bidirectional boolean Does it count both ways?
---@field location plumbrule.word Where it is.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.source Another power source: existing PV, storage, a generator.
---@field kind plumbrule.word What it is.
---@field output_current plumbrule.quantity Its continuous rated output current.
---@field ocpd_rating plumbrule.quantity Rating of its overcurrent device.
---@field power plumbrule.quantity Its rated power.
---@field energy plumbrule.quantity What it stores.
---@field parallel boolean Can it run in parallel with the utility?
---@field interlocked boolean Does a transfer switch or interlock keep it from running in parallel?
---@field listings plumbrule.words Standards it is listed to.
---@field breakers plumbrule.list<plumbrule.breaker> The breaker it is on.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.interconnection Where the array's output meets the house.
---@field side plumbrule.word Load side, feeder or supply side.
---@field at plumbrule.circuit|plumbrule.panel|plumbrule.busbar|nil Where.
---@field conductors plumbrule.circuit|nil The conductors that reach it.
---@field disconnect plumbrule.disconnect|nil The disconnect on the supply side, where it is not that of the PV system.
---@field ocpd_rating plumbrule.quantity Rating of the overcurrent device at it.
---@field ocpd_distance plumbrule.quantity Conductor length from the connection to that device.
---@field inside_building boolean Are the connected conductors inside the building?
---@field listed_taps boolean Are the tap connectors listed for it?
---@field bonded_as_service boolean Is its disconnect bonded as service equipment?
---@field nominal_voltage plumbrule.quantity Nominal AC voltage there.
---@field instructions_allow_taps boolean Do the instructions of the tapped equipment allow it?
---@field export_limit plumbrule.quantity Limit of export agreed with the utility.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.rapid_shutdown How the conductors on the roof are made safe.
---@field method plumbrule.word How.
---@field device plumbrule.converter_model|plumbrule.inverter_model|plumbrule.shutdown_model|nil The device that does it.
---@field initiator plumbrule.disconnect|nil What sets it off.
---@field initiators integer How many devices set it off.
---@field initiator_location plumbrule.word Where the initiator is.
---@field initiator_readily_accessible boolean Can one reach the initiator without climbing or removing anything?
---@field boundary plumbrule.quantity How far outside the array conductors stay live beyond the limit.
---@field length_inside_building plumbrule.quantity How far inside the building, from entry, they stay so.
---@field voltage_outside plumbrule.quantity Voltage outside the boundary after initiation.
---@field voltage_inside plumbrule.quantity Voltage inside the boundary after initiation.
---@field time plumbrule.quantity Time to reach those voltages.
---@field listings plumbrule.words Standards the system is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.grounding Grounding and bonding.
---@field bonding plumbrule.word How module frames and racking are bonded.
---@field pair_listed boolean Is this module listed with this racking for bonding?
---@field array_egc_size plumbrule.word Size of the array's equipment grounding conductor.
---@field array_egc_material plumbrule.word Its material.
---@field array_egc_protected boolean Is it protected from physical damage?
---@field gec_size plumbrule.word Size of the grounding electrode conductor.
---@field gec_material plumbrule.word Its material.
---@field electrodes plumbrule.words Electrodes of the building's grounding electrode system.
---@field rods integer Rods, pipes and plates among them.
---@field rod_spacing plumbrule.quantity Least distance between two of those.
---@field rod_resistance plumbrule.quantity Measured resistance to earth of a lone rod, pipe or plate.
---@field connected_to_building_system boolean Is the PV system tied to the building's grounding electrode system?
---@field bonded_over_250_volts boolean Are metal raceways of circuits over 250 V to ground bonded as 250.97 asks?
---@field ground_fault_protection boolean Is there DC ground-fault protection?
---@field ground_fault_indication boolean Is a ground fault shown at a readily accessible place?
---@field solidly_grounded boolean Is a DC conductor solidly grounded?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.label One label or placard.
---@field kind plumbrule.word Which label it is.
---@field place plumbrule.word Where it stands.
---@field text string What it says.
---@field letter_height plumbrule.quantity Height of its letters.
---@field color plumbrule.word Its colors.
---@field reflective boolean Is it reflective?
---@field permanent boolean Is it permanent and fit for its place?
---@field spacing plumbrule.quantity Distance from one to the next, where it repeats.
---@field distance plumbrule.quantity Distance from what it marks.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.paper One paper for the permit or the utility.
---@field kind plumbrule.word Which paper it is.
---@field state plumbrule.word How far it is.
---@field date plumbrule.date When it was made or approved.
---@field by string Who made or sealed it.
---@field sealed boolean Is it sealed by a licensed professional?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.jobsite How the crew works safely.
---@field fall_protection plumbrule.word How falls are kept off.
---@field working_height plumbrule.quantity Height of the lowest unprotected edge above the level below.
---@field guardrail_height plumbrule.quantity Height of the guardrail's top.
---@field ladder_extension plumbrule.quantity How far the ladder stands above the landing.
---@field ladder_base_ratio number Base distance over working length of the ladder.
---@field ladder_tied boolean Is the ladder tied?
---@field modules_by_hoist boolean Are modules hoisted rather than carried up ladders?
---@field skylights_guarded boolean Are skylights and holes guarded?
---@field overhead_line_distance plumbrule.quantity Least distance of people and equipment from overhead lines.
---@field overhead_line_voltage plumbrule.quantity Voltage of those lines.
---@field lifters integer People on one module when it is lifted.
---@field lockout_plan boolean Is there a lockout plan?
---@field perimeter_marked boolean Is the ground below the work marked off?
---@field rescue_plan boolean Is there a plan to rescue somebody hanging in a harness?
---@field crew plumbrule.list<plumbrule.person> The crew.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.person One person of the crew.
---@field role plumbrule.word What they do.
---@field license string Their license.
---@field fall_trained boolean Trained to use fall protection?
---@field first_aid boolean Trained in first aid?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.working_space The clear space before equipment.
---@field depth plumbrule.quantity Clear depth before it.
---@field width plumbrule.quantity Clear width.
---@field height plumbrule.quantity Clear height.
---@field equipment_width plumbrule.quantity Width of the equipment.
---@field facing plumbrule.word What is across from its live parts.
---@field door_opens_90 boolean Does its door open at least 90 degrees?
---@field clear_of_storage boolean Is it kept clear?
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field needed fun(self, voltage?: any): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity The clear space that it needs.

---@class (exact) plumbrule.module_model A model of module, from its data sheet.
---@field maker string Who makes it.
---@field rated_power plumbrule.quantity Rated power at standard test conditions.
---@field open_circuit_voltage plumbrule.quantity Open-circuit voltage at standard test conditions.
---@field power_voltage plumbrule.quantity Voltage at maximum power.
---@field short_circuit_current plumbrule.quantity Short-circuit current at standard test conditions.
---@field power_current plumbrule.quantity Current at maximum power.
---@field voc_coefficient plumbrule.quantity Temperature coefficient of open-circuit voltage, as a share.
---@field voc_coefficient_volts plumbrule.quantity The same in volts.
---@field vmp_coefficient plumbrule.quantity Temperature coefficient of voltage at maximum power.
---@field power_coefficient plumbrule.quantity Temperature coefficient of power.
---@field technology plumbrule.word Cell technology.
---@field maximum_series_fuse plumbrule.quantity Largest series fuse.
---@field maximum_system_voltage plumbrule.quantity Largest system voltage.
---@field length plumbrule.quantity Longer side.
---@field width plumbrule.quantity Shorter side.
---@field thickness plumbrule.quantity Thickness of the frame.
---@field weight plumbrule.quantity Weight.
---@field uplift_rating plumbrule.quantity Rated load on the back, as mounted.
---@field down_rating plumbrule.quantity Rated load on the front, as mounted.
---@field rating_basis plumbrule.word Whether those are design loads or test loads (1.5 times design).
---@field fire_type plumbrule.word Fire type.
---@field connector string Connector on its leads.
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field cold_voltage fun(self, temperature: any): plumbrule.quantity Open-circuit voltage of one module in the cold, by its coefficient or the table.

---@class (exact) plumbrule.converter_model A model of DC-to-DC converter, from its data sheet.
---@field maker string Who makes it.
---@field rated_input_power plumbrule.quantity Rated DC input power.
---@field maximum_input_voltage plumbrule.quantity Largest input voltage.
---@field maximum_input_current plumbrule.quantity Largest input short-circuit current.
---@field maximum_output_current plumbrule.quantity Largest continuous output current.
---@field maximum_output_voltage plumbrule.quantity Largest output voltage.
---@field shutdown_voltage plumbrule.quantity Output voltage when shut down.
---@field string_voltage plumbrule.quantity Voltage at which the inverter holds the string.
---@field maximum_string_voltage plumbrule.quantity Largest string voltage that the instructions state.
---@field maximum_string_power plumbrule.quantity Largest power per string.
---@field minimum_per_string integer Fewest converters in a string.
---@field maximum_per_string integer Most converters in a string.
---@field connector string Connector on its leads.
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.inverter_model A model of inverter or microinverter, from its data sheet.
---@field maker string Who makes it.
---@field type plumbrule.word What kind of inverter.
---@field rated_power plumbrule.quantity Rated AC power.
---@field output_current plumbrule.quantity Marked continuous AC output current.
---@field nominal_voltage plumbrule.quantity Nominal AC voltage.
---@field maximum_ocpd plumbrule.quantity Largest AC overcurrent device that the maker allows.
---@field maximum_dc_voltage plumbrule.quantity Largest DC input voltage.
---@field tracking_low plumbrule.quantity Lower end of the tracking window.
---@field tracking_high plumbrule.quantity Upper end of the tracking window.
---@field start_voltage plumbrule.quantity DC voltage it needs to start.
---@field nominal_dc_voltage plumbrule.quantity Fixed DC voltage at which it holds converter strings.
---@field tracking_inputs integer Tracking inputs.
---@field strings_per_input integer Strings that one tracking input takes.
---@field maximum_input_current plumbrule.quantity Largest operating current per tracking input.
---@field maximum_short_circuit_current plumbrule.quantity Largest short-circuit current per tracking input.
---@field maximum_dc_power plumbrule.quantity Largest array power that the maker allows.
---@field minimum_module_power plumbrule.quantity Smallest module for a microinverter.
---@field maximum_module_power plumbrule.quantity Largest module for a microinverter.
---@field maximum_per_branch integer Most microinverters on one branch.
---@field branch_ocpd plumbrule.quantity Overcurrent device that the maker asks for on a branch.
---@field terminal_temperature plumbrule.quantity Temperature rating of its AC terminals.
---@field enclosure_type plumbrule.word Type number marked on its enclosure, which says what weather it stands.
---@field dc_disconnect boolean Is a DC disconnect built in?
---@field ac_disconnect boolean Is a disconnect of its AC output built in?
---@field arc_fault_protection boolean Is DC arc-fault protection built in?
---@field ground_fault_protection boolean Is ground-fault protection built in?
---@field power_control boolean Is it part of a listed power control system?
---@field weight plumbrule.quantity Weight.
---@field connector string DC connector, where it has one.
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.shutdown_model A model of rapid-shutdown device, from its data sheet.
---@field maker string Who makes it.
---@field maximum_input_voltage plumbrule.quantity Largest input voltage per module.
---@field maximum_system_voltage plumbrule.quantity Largest system voltage.
---@field maximum_current plumbrule.quantity Largest current.
---@field shutdown_voltage plumbrule.quantity Voltage left when shut down.
---@field connector string Connector on its leads.
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.racking_model A model of racking, from its data sheet.
---@field maker string Who makes it.
---@field rail_weight plumbrule.quantity Weight of rail per length.
---@field clamp_uplift plumbrule.quantity Allowable uplift on one module clamp.
---@field clamp_along_rail plumbrule.quantity Allowable push on one module clamp along its rail: by it a clamp slips.
---@field clamp_across_rail plumbrule.quantity Allowable push on one module clamp across its rail.
---@field connection_uplift plumbrule.quantity Allowable uplift of the rail on one attachment.
---@field connection_along_rail plumbrule.quantity Allowable push of the rail on one attachment along the rail.
---@field connection_across_rail plumbrule.quantity Allowable push of the rail on one attachment across the rail.
---@field spans plumbrule.list<plumbrule.span_row> The maker's table of rail spans.
---@field fire_class plumbrule.word Class A, B or C of the racking system with the module types below.
---@field fire_types plumbrule.words Module types for which that holds.
---@field fire_minimum_slope plumbrule.quantity Least slope for which that holds.
---@field bonds_modules boolean Does it bond the modules it is listed with?
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.span_row One row of a maker's table of rail spans.
---@field uplift plumbrule.quantity Largest net uplift (allowable stress level) for the row.
---@field down plumbrule.quantity Largest downward pressure (allowable stress level) for the row.
---@field span plumbrule.quantity Largest span between attachments.
---@field cantilever plumbrule.quantity Largest cantilever.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@class (exact) plumbrule.attachment_model A model of attachment, from its data sheet or test report.
---@field maker string Who makes it.
---@field kind plumbrule.word What it is.
---@field fastener plumbrule.word What holds it down.
---@field fasteners integer Fasteners per attachment.
---@field fastener_diameter plumbrule.quantity Diameter of the fastener.
---@field fastener_length plumbrule.quantity Length below its head.
---@field fixture_thickness plumbrule.quantity Thickness between fastener head and wood: mount, flashing, covering; the deck is counted by itself.
---@field plate_thickness plumbrule.quantity Thickness of the metal that bears on a lag or wood screw's shank: the mount's base.
---@field plate_material plumbrule.word Metal of that base.
---@field plate_bearing_strength plumbrule.quantity Dowel bearing strength of that base as its maker or an engineer states it; needed unless it is steel, whose own counts.
---@field embedment plumbrule.quantity Threaded length in the member, tip left out, as the maker details it.
---@field tested_uplift plumbrule.quantity Tested capacity in uplift.
---@field tested_down plumbrule.quantity Tested capacity downward.
---@field tested_lateral plumbrule.quantity Tested capacity along the roof, pushed where the rail is bolted: what the push tips is in it.
---@field test_basis plumbrule.word Allowable (safety factor already in) or ultimate.
---@field tested_on plumbrule.word What it was tested on.
---@field tested_deck_thickness plumbrule.quantity Of a mount tested on a deck: the thinnest deck it was tested on.
---@field prying_factor number How much prying raises the fasteners' tension: 1 where uplift pulls in line with them. It does not lower the tested capacity, which has it in.
---@field edge_distance plumbrule.quantity Distance from fastener to edge of the member.
---@field flashing plumbrule.word How it keeps water out.
---@field coverings plumbrule.words Coverings it is made for.
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.
---@field withdrawal fun(self, load_duration: any, stands_on: any, species?: any, specific_gravity?: any, sheathing?: any, wet_service?: any, temperature?: any, member_depth?: any): plumbrule.quantity, plumbrule.quantity, plumbrule.quantity, plumbrule.quantity What its fasteners hold in a kind of wood.
---@field uplift_capacity fun(self, load_duration: any, stands_on: any, species?: any, specific_gravity?: any, sheathing?: any, wet_service?: any, temperature?: any, member_depth?: any, safety_factor?: any): plumbrule.quantity, any, plumbrule.quantity, plumbrule.quantity, plumbrule.quantity Allowable uplift: the least of fasteners and tested mount.
---@field lateral_capacity fun(self, load_duration: any, stands_on: any, species?: any, specific_gravity?: any, sheathing?: any, wet_service?: any, temperature?: any, member_depth?: any, safety_factor?: any, direction?: any): plumbrule.quantity, any, plumbrule.quantity, plumbrule.quantity Allowable load along the roof: the least of its screws and tested mount.
---@field down_capacity fun(self, safety_factor?: any): plumbrule.quantity Allowable load downward.

---@class (exact) plumbrule.panel_model A model of panelboard, from its marking.
---@field maker string Who makes it.
---@field bus_rating plumbrule.quantity Marked rating of its bus.
---@field maximum_main plumbrule.quantity Largest main it takes.
---@field spaces integer Spaces.
---@field tandem_spaces integer Spaces that take tandems.
---@field taps_allowed boolean Do its instructions allow taps?
---@field listings plumbrule.words Standards it is listed to.
---@field called fun(self): string Its name.
---@field kind_of fun(self): string Its kind.

---@type plumbrule.quantity
A = nil
---@type plumbrule.quantity
N = nil
---@type plumbrule.quantity
Pa = nil
---@type plumbrule.quantity
V = nil
---@type plumbrule.quantity
VA = nil
---@type plumbrule.quantity
W = nil
---@type plumbrule.quantity
Wh = nil
---Without its sign.
---@return any
function abs(a) end
calc = {}
---Volts lost on an ac circuit.
---@return plumbrule.quantity
function calc.ac_voltage_drop(inputs) end
---What a conductor carries where it runs.
---@return plumbrule.quantity
function calc.ampacity(inputs) end
---Whether a panel is exposed, and what that adds to uplift.
---@return number
function calc.array_edge_factor(inputs) end
---Governing loads of allowable stress design on a roof surface.
---@return plumbrule.quantity
function calc.asd_combinations(inputs) end
---Load on one attachment.
---@return plumbrule.quantity
function calc.attachment_load(inputs) end
---Wind pressure on the roof itself without the array, ultimate level.
---@return plumbrule.quantity
function calc.bare_roof_pressure(inputs) end
---What a bus with sources must be rated, by each option.
---@return plumbrule.quantity
function calc.busbar_options(inputs) end
---Open-circuit voltage of a string in the cold.
---@return plumbrule.quantity
function calc.cold_voltage(inputs) end
---What a fastener carries when pulled and pushed at once.
---@return plumbrule.quantity
function calc.combined_capacity(inputs) end
---How large a conductor is, to tell which of two is larger.
---@return number
function calc.conductor_area(inputs) end
---How full a raceway is.
---@return plumbrule.quantity
function calc.conduit_fill(inputs) end
---A string of DC-to-DC converters against its maker's limits.
---@return boolean
function calc.converter_string(inputs) end
---The current against the ampacity after corrections.
---@return plumbrule.quantity
function calc.corrected_ampacity(inputs) end
---Volts lost on a dc circuit.
---@return plumbrule.quantity
function calc.dc_voltage_drop(inputs) end
---Weight of an array per area.
---@return plumbrule.quantity
function calc.dead_load_per_area(inputs) end
---The service conductor of a dwelling.
---@return string
function calc.dwelling_conductor(inputs) end
---Load of an existing dwelling to which loads are added.
---@return plumbrule.quantity
function calc.dwelling_load_existing(inputs) end
---Load of a dwelling by the optional method.
---@return plumbrule.quantity
function calc.dwelling_load_optional(inputs) end
---Effective wind area of an element.
---@return plumbrule.quantity
function calc.effective_wind_area(inputs) end
---The equipment grounding conductor behind a device.
---@return string
function calc.egc_size(inputs) end
---How much an array changes what a roof carries.
---@return number
function calc.existing_structure_change(inputs) end
---Velocity pressure exposure coefficient Kz.
---@return number
function calc.exposure_coefficient(inputs) end
---External pressure coefficient GCp of a roof zone for an effective wind area.
---@return number
function calc.external_pressure_coefficient(inputs) end
---What an attachment's fasteners hold, prying counted.
---@return plumbrule.quantity
function calc.fastener_capacity(inputs) end
---A feeder with a source not at its opposite end.
---@return plumbrule.quantity
function calc.feeder_ampacity(inputs) end
---A tap of a feeder that sources feed.
---@return plumbrule.quantity
function calc.feeder_tap(inputs) end
---Snow load on a flat roof.
---@return plumbrule.quantity
function calc.flat_roof_snow(inputs) end
---The grounding electrode conductor of a service.
---@return string
function calc.gec_size(inputs) end
---Ground elevation factor Ke.
---@return number
function calc.ground_elevation_factor(inputs) end
---Voltage of a string at maximum power in the heat.
---@return plumbrule.quantity
function calc.hot_voltage(inputs) end
---What a lag screw through a metal plate carries sideways.
---@return plumbrule.quantity
function calc.lag_lateral(inputs) end
---What a lag screw holds against being pulled out of wood.
---@return plumbrule.quantity
function calc.lag_withdrawal(inputs) end
---The largest device that protects a conductor.
---@return plumbrule.quantity
function calc.largest_ocpd_for(inputs) end
---How much wood carries more for a load that does not last.
---@return number
function calc.load_duration_factor(inputs) end
---Most modules in series below a voltage.
---@return number
function calc.longest_string(inputs) end
---Current and device of a microinverter branch.
---@return plumbrule.quantity
function calc.microinverter_branch(inputs) end
---The next standard size down.
---@return plumbrule.quantity
function calc.ocpd_down(inputs) end
---The next standard size up.
---@return plumbrule.quantity
function calc.ocpd_up(inputs) end
---The most that a bus lets sources feed it.
---@return plumbrule.quantity
function calc.panel_largest_backfeed(inputs) end
---Wind pressure on panels parallel to the roof, ultimate level.
---@return plumbrule.quantity
function calc.panel_pressure(inputs) end
---Whether strings in parallel need a device each.
---@return boolean
function calc.parallel_fusing(inputs) end
---Whether the section for panels parallel to the roof covers an array.
---@return boolean
function calc.parallel_section(inputs) end
---How far pressure below and above a panel evens out, by effective wind area.
---@return number
function calc.pressure_equalization(inputs) end
---Bending of a rafter under an even load.
---@return plumbrule.quantity
function calc.rafter_bending(inputs) end
---Deflection of a rafter under an even load.
---@return plumbrule.quantity
function calc.rafter_deflection(inputs) end
---Shear in a rafter under an even load.
---@return plumbrule.quantity
function calc.rafter_shear(inputs) end
---How far a rafter may span.
---@return plumbrule.quantity
function calc.rafter_span(inputs) end
---Moment, shear and deflection of one span under point loads and an even load.
---@return plumbrule.quantity
function calc.rafter_with_point_loads(inputs) end
---Load per length of rail.
---@return plumbrule.quantity
function calc.rail_line_load(inputs) end
---Balanced snow on a sloped roof, with minimum and rain on snow.
---@return plumbrule.quantity
function calc.roof_snow(inputs) end
---Section of a nominal size of lumber.
---@return plumbrule.quantity
function calc.section_properties(inputs) end
---Smallest service disconnect.
---@return plumbrule.quantity
function calc.service_disconnect_minimum(inputs) end
---Fewest modules in series that reach a voltage.
---@return number
function calc.shortest_string(inputs) end
---The smallest conductor that serves by all three tests.
---@return string
function calc.smallest_conductor(inputs) end
---How wind clears snow from a roof, Ce.
---@return number
function calc.snow_exposure_factor(inputs) end
---How much the building matters, Is.
---@return number
function calc.snow_importance_factor(inputs) end
---How slope sheds snow, Cs.
---@return number
function calc.snow_slope_factor(inputs) end
---How warmth melts snow on a roof, Ct.
---@return number
function calc.snow_thermal_factor(inputs) end
---Largest current of strings in parallel.
---@return plumbrule.quantity
function calc.source_current(inputs) end
---A connection on the supply side of the service disconnect.
---@return plumbrule.quantity
function calc.supply_side(inputs) end
---125 % of the current against the uncorrected column of the terminals.
---@return plumbrule.quantity
function calc.terminal_ampacity(inputs) end
---How much of a fastener's thread stands in the member.
---@return plumbrule.quantity
function calc.thread_penetration(inputs) end
---Area of array that one attachment carries.
---@return plumbrule.quantity
function calc.tributary_area(inputs) end
---Width of array that one rail carries.
---@return plumbrule.quantity
function calc.tributary_width(inputs) end
---Snow that wind has moved over the ridge of a gable.
---@return plumbrule.quantity
function calc.unbalanced_snow(inputs) end
---Velocity pressure of the wind at mean roof height.
---@return plumbrule.quantity
function calc.velocity_pressure(inputs) end
---The part of an attachment that holds least, and what the others hold.
---@return plumbrule.quantity
function calc.weakest_part(inputs) end
---Weight of an array per attachment.
---@return plumbrule.quantity
function calc.weight_per_attachment(inputs) end
---Specific gravity of a wood species for its connections.
---@return number
function calc.wood_gravity(inputs) end
---What a wood screw through a metal plate carries sideways.
---@return plumbrule.quantity
function calc.wood_screw_lateral(inputs) end
---What a wood screw holds against being pulled out of wood.
---@return plumbrule.quantity
function calc.wood_screw_withdrawal(inputs) end
---Clear space before equipment.
---@return plumbrule.quantity
function calc.working_space(inputs) end
---Width of the edge and corner strips of a roof for wind.
---@return plumbrule.quantity
function calc.zone_width(inputs) end
---A temperature: celsius(30).
---@return plumbrule.quantity
function celsius(number) end
---@type plumbrule.quantity
cm = nil
---The cosine of an angle.
---@return number
function cos(angle) end
---@type plumbrule.quantity
day = nil
---@type plumbrule.quantity
deg = nil
---@type plumbrule.quantity
delta_C = nil
---@type plumbrule.quantity
delta_F = nil
---A temperature: fahrenheit(86).
---@return plumbrule.quantity
function fahrenheit(number) end
---A text with values in it: format("%s of %d", a, n).
---@return string
function format(pattern, ...) end
---@type plumbrule.quantity
ft = nil
---@type plumbrule.quantity
h = nil
---@type plumbrule.quantity
inch = nil
---Goes through a list: for _, one in ipairs(list) do … end.
---@return any
function ipairs(list) end
---@type plumbrule.quantity
kA = nil
---@type plumbrule.quantity
kN = nil
---@type plumbrule.quantity
kPa = nil
---@type plumbrule.quantity
kV = nil
---@type plumbrule.quantity
kVA = nil
---@type plumbrule.quantity
kW = nil
---@type plumbrule.quantity
kWh = nil
---@type plumbrule.quantity
kg = nil
---@type plumbrule.quantity
kip = nil
---@type plumbrule.quantity
km = nil
---@type plumbrule.quantity
ksi = nil
---The largest of several amounts of one kind.
---@return any
function largest(a, ...) end
---@type plumbrule.quantity
lb = nil
---@type plumbrule.quantity
lbf = nil
---@type plumbrule.quantity
m = nil
---@type plumbrule.quantity
mA = nil
---@type plumbrule.quantity
mV = nil
math = {}
---Without its sign.
---@return any
function math.abs(a) end
---To the next whole number above.
---@return number
function math.ceil(number) end
---The exponential.
---@return number
function math.exp(number) end
---To the next whole number below.
---@return number
function math.floor(number) end
---The logarithm to the base 10.
---@return number
function math.log10(number) end
---The largest.
---@return any
function math.max(a, ...) end
---The smallest.
---@return any
function math.min(a, ...) end
---3.14159…
---@type number
math.pi = nil
---The square root.
---@return any
function math.sqrt(a) end
---@type plumbrule.quantity
mi = nil
---@type plumbrule.quantity
min = nil
---@type plumbrule.quantity
mm = nil
---@type plumbrule.quantity
mph = nil
---@type plumbrule.quantity
ohm = nil
---@type plumbrule.quantity
pcf = nil
---@type plumbrule.quantity
plf = nil
---@type plumbrule.quantity
psf = nil
---@type plumbrule.quantity
psi = nil
---Hands a point to a person, with values to look at.
function review(why, ...) end
---To the next whole number below.
---@return number
function round_down(number) end
---To the next whole number above.
---@return number
function round_up(number) end
---@type plumbrule.quantity
s = nil
---Are both the same? Things that cannot be compared are refused.
---@return boolean
function same(a, b) end
---What stands from the n-th on.
---@return any
function select(n, ...) end
shall = {}
---This must hold: a yes/no fact or a comparison.
function shall.be(what, yes) end
---Actual must be at least the limit.
function shall.be_at_least(what, actual, limit, unit) end
---Both must be the same.
function shall.be_equal(what, actual, limit, unit) end
---Actual must be less than the limit.
function shall.be_less_than(what, actual, limit, unit) end
---Actual must be more than the limit.
function shall.be_more_than(what, actual, limit, unit) end
---One way of several must hold: { {"its name", function() … end}, … }. All are tried.
function shall.meet_one_of(options) end
---Actual must be at most the limit. The unit, if there is one, is what both are shown in.
function shall.not_exceed(what, actual, limit, unit) end
should = {}
---As with shall, but what does not hold is a warning.
function should.be(what, yes) end
---As with shall, but what does not hold is a warning.
function should.be_at_least(what, actual, limit, unit) end
---As with shall, but what does not hold is a warning.
function should.be_equal(what, actual, limit, unit) end
---As with shall, but what does not hold is a warning.
function should.be_less_than(what, actual, limit, unit) end
---As with shall, but what does not hold is a warning.
function should.be_more_than(what, actual, limit, unit) end
---As with shall, but what does not hold is a warning.
function should.not_exceed(what, actual, limit, unit) end
---The sine of an angle.
---@return number
function sin(angle) end
---The smallest of several amounts of one kind.
---@return any
function smallest(a, ...) end
---@type plumbrule.quantity
sq_ft = nil
---@type plumbrule.quantity
sq_in = nil
---@type plumbrule.quantity
sq_m = nil
---The square root.
---@return any
function sqrt(a) end
string = {}
---Does it hold this piece, letter by letter?
---@return boolean
function string.contains(text, piece) end
---How many bytes it has.
---@return integer
function string.len(text) end
---In small letters.
---@return string
function string.lower(text) end
---The least and the largest number before one of these units, with a blank between or without; nil where there is none.
---@return number?, number?
function string.numbers_before(text, unit, ...) end
---A part of it.
---@return string
function string.sub(text, first, last) end
---In large letters.
---@return string
function string.upper(text) end
table = {}
---Joins texts.
---@return string
function table.concat(list, between) end
---Adds at the end.
function table.insert(list, value) end
---Takes from the end.
---@return any
function table.remove(list) end
---Sorts; what is equal keeps its order.
function table.sort(list, before) end
---The tangent of an angle.
---@return number
function tan(angle) end
---The number that a text says, or nil.
---@return number|nil
function tonumber(text) end
---Anything as people read it.
---@return string
function tostring(a) end
---What something is: "quantity", "number", "word" …
---@return string
function type(a) end
---@type plumbrule.quantity
yd = nil
---@type plumbrule.quantity
year = nil

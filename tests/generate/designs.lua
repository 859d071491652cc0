-- Makes designs by a seed: houses, roofs, arrays, wiring and papers that differ, each a design as people write it.
--
--     lua5.4 designs.lua SEED COUNT FOLDER [MODULES]
--
-- writes FOLDER/000/design-000001.yaml … (a thousand to a folder) and FOLDER/list with their paths, for --from-list.
-- The same seed makes the same designs, and design N is the same whatever COUNT is. MODULES (10 to 2000) sets the size
-- of each array; without it arrays have 6 to 44 modules. About one fact in sixty is left out, and some amounts are
-- beyond what books allow, so that designs stand, fail and are open. Everything is invented.
local seed, count, folder, modules = math.tointeger(arg[1]), math.tointeger(arg[2]), arg[3], math.tointeger(arg[4] or 0)
if not (seed and count and folder and modules) then
  io.stderr:write("designs.lua SEED COUNT FOLDER [MODULES]\n")
  os.exit(64)
end

local random = math.random
local function pick(list) return list[random(#list)] end
local function chance(share) return random() < share end
local function between(low, high, step) return low + step * random(0, (high - low) // step) end
local function yes(share) return chance(share) and "yes" or "no" end
local function number(value) return (("%.3f"):format(value):gsub("0+$", ""):gsub("%.$", "")) end
local function feet(value) return number(value) .. " ft" end
local function inches(value) return number(value) .. " in" end

-- ---- writing ----------------------------------------------------------------------------------------------------

local out
local function put(text) out[#out + 1] = text end
-- A fact on its own line; now and then it is not told.
local function fact(indent, name, value, is_needed)
  if is_needed or not chance(1 / 60) then put((" "):rep(indent) .. name .. ": " .. tostring(value)) end
end
-- { {name, value, is_needed}, … } as lines, the first behind a dash.
local function item(indent, facts)
  put((" "):rep(indent) .. "- name: " .. facts.name)
  for _, one in ipairs(facts) do fact(indent + 2, one[1], one[2], one[3]) end
end
-- The same on one line.
local function row(indent, facts)
  local parts = { "name: " .. facts.name }
  for _, one in ipairs(facts) do
    if one[3] or not chance(1 / 60) then parts[#parts + 1] = one[1] .. ": " .. tostring(one[2]) end
  end
  put((" "):rep(indent) .. "- {" .. table.concat(parts, ", ") .. "}")
end

-- ---- what can be chosen -----------------------------------------------------------------------------------------

local module_models = {
  { name = "Quillon Q440", length = 74, width = 41, power = 440, current = 10.62, converter = "Brae D500" },
  { name = "Quillon Q405", length = 68, width = 44.6, power = 405, current = 13.8, converter = "Brae D425" },
}
local first = { "Ida", "Bram", "Oda", "Tove", "Emrys", "Lio", "Pia", "Sten", "Wren", "Yara" }
local last = { "Pell", "Ollery", "Marsh", "Tarn", "Voss", "Quill", "Hearn", "Sedge", "Brandt", "Lowe" }
local streets = { "Heron Row", "Tern Lane", "Moss End", "Kelp Street", "Alder Bank", "Signal Hill", "Mill Turn" }
local woods = { "Douglas Fir-Larch", "Hem-Fir", "Southern Pine", "Spruce-Pine-Fir" }

local function house_of(number_of)
  local house = {
    title = ("%s %d"):format(pick(streets), number_of),
    owner = pick(first) .. " " .. pick(last),
    slope = between(3, 9, 1),
    length = between(36, 72, 2),
    module = pick(module_models),
    system = pick { "converters", "strings", "micro" },
    stories = pick { 1, 1, 2 },
    exposure = pick { "B", "C", "C", "D" },
    high = between(28, 42, 1),
    spacing = pick { 16, 24 },
    is_two_sided = chance(0.3),
    wanted = modules > 0 and modules or between(6, 44, 1),
  }
  house.run = between(14, 24, 0.5) -- along the slope
  if modules > 0 then -- a roof that takes them
    local across = math.ceil(math.sqrt(modules * house.module.length / house.module.width))
    house.length = math.max(house.length, math.ceil(across * (house.module.width + 0.5) / 12) + 8)
    house.run = math.max(house.run, math.ceil(math.ceil(modules / across) * (house.module.length + 0.5) / 12) + 8)
  end
  house.width = 2 * house.run * math.cos(math.atan(house.slope, 12)) - 2
  house.eave = house.stories * 9 + between(0, 2, 1)
  return house
end

-- Rows of modules from the eave up, as many as fit below the ridge; now and then one too near to it.
local function rows_of(house)
  local module, rows, left = house.module, {}, house.wanted
  local y, top = between(12, 24, 2), house.run * 12 - (chance(0.8) and pick { 18, 20, 36 } or 6)
  while left > 0 and y + module.length <= top do
    local most = (house.length * 12 - 72) // (module.width + 0.5)
    local columns = math.min(left, math.tointeger(most), modules > 0 and 2000 or between(5, 14, 1))
    if columns < 1 then break end
    local x = chance(0.1) and 8 or between(36, 44, 2)
    rows[#rows + 1] = { name = "row-" .. #rows + 1, x = x, y = y, columns = columns }
    y, left = y + module.length + 0.5, left - columns
  end
  return rows
end

-- ---- the parts of a design --------------------------------------------------------------------------------------

local function put_head(house)
  put("title: " .. house.title)
  put("catalogue: [modules, inverters, converters, shutdown, racking]")
  put("project:")
  fact(2, "address", ("%d %s, Marrow Bay"):format(random(1, 400), pick(streets)))
  fact(2, "owner", house.owner)
  fact(2, "installer", "Lantern Roofworks")
  fact(2, "installer_license", "LR-" .. random(1000, 9999))
  fact(2, "designer", pick(first) .. " " .. pick(last))
  fact(2, "permit_number", ("B-2026-%04d"):format(random(1, 9999)), true)
  fact(2, "permit_application_date", ("2026-%02d-%02d"):format(random(7, 12), random(1, 28)), true)
  fact(2, "scope", pick { "[roof-mounted PV]", "[roof-mounted PV, panel replacement]" })
  put("site:")
  fact(2, "exposure", house.exposure)
  fact(2, "elevation", feet(between(5, 900, 5)))
  fact(2, "risk_category", "II")
  fact(2, "topographic_factor", pick { 1, 1, 1, 1.2 })
  fact(2, "snow_exposure", pick { "fully exposed", "partially exposed", "sheltered" })
  fact(2, "design_low_temperature", ("{is: %d °C, from: data sheet}"):format(between(-24, -4, 1)))
  fact(2, "design_high_temperature", house.high .. " °C")
  fact(2, "distance_to_shore", feet(between(400, 20000, 100)))
  fact(2, "wind_borne_debris_region", "no")
  fact(2, "special_wind_region", "no")
  put("building:")
  fact(2, "dwelling_units", 1)
  fact(2, "occupancy", "one-family dwelling")
  fact(2, "stories", house.stories)
  fact(2, "eave_height", feet(house.eave))
  fact(2, "mean_roof_height", feet(house.eave + house.run * house.slope / 26))
  fact(2, "length", feet(math.max(house.length, house.width)))
  fact(2, "width", feet(math.min(house.length, house.width)))
  fact(2, "sprinklers", chance(0.1) and "NFPA 13D" or "none")
  fact(2, "enclosure", "enclosed")
  fact(2, "heated", yes(0.9))
  fact(2, "ventilated_attic", yes(0.7))
  fact(2, "roof_operations", yes(0.95))
  fact(2, "year_built", between(1925, 2019, 1))
  fact(2, "escape_openings", "none")
end

local function put_plane(house, name, azimuth, is_front)
  local length, run = house.length, house.run
  item(4, {
    name = name,
    { "outline", ("[[0 ft, 0 ft], [%s, 0 ft], [%s, %s], [0 ft, %s]]"):format(feet(length), feet(length), feet(run), feet(run)), true },
    { "edges", "[eave, rake, ridge, rake]", true },
    { "slope", house.slope .. "/12" },
    { "azimuth", azimuth .. "°" },
    { "structure", "dwelling" },
    { "faces", is_front and "[street]" or "[rear]" },
    { "covering", "composition shingle" },
    { "covering_fire_class", pick { "A", "A", "C" } },
    { "layers", pick { 1, 1, 1, 2 } },
    { "age", between(1, 25, 1) .. " year" },
    { "deck", pick { "plywood", "OSB", "boards" } },
    { "deck_thickness", pick { "7/16 in", "1/2 in", "3/4 in" } },
    { "dead_load", pick { 7, 8, 9, 10, 15 } .. " psf" },
    { "eave_overhang", between(0, 24, 4) .. " in" },
    { "sheds_onto_lower_roof", yes(0.05) },
    { "snow_guards", yes(0.05) },
  })
  put("      framing:")
  fact(8, "kind", "rafter")
  fact(8, "size", pick { "2x6", "2x8", "2x8", "2x10" })
  fact(8, "species", pick(woods))
  fact(8, "grade", pick { "No. 1", "No. 2", "No. 2" })
  fact(8, "spacing", house.spacing .. " in", true)
  fact(8, "span", feet(between(8, 15, 0.5)))
  fact(8, "first_at", "0 in")
  fact(8, "ceiling_attached", yes(0.3))
  fact(8, "condition", chance(0.95) and "sound" or "sagging")
  fact(8, "wet_service", "no")
  put("      obstructions:" .. (chance(0.5) and " none" or ""))
  if out[#out]:find("none") then return end
  for i = 1, random(1, 3) do
    local kind = pick { "pipe", "vent", "skylight", "chimney" }
    local size = kind == "pipe" and 3 or kind == "vent" and 12 or 24
    row(8, { name = "thing-" .. i, { "kind", kind }, { "at", ("[%s, %s]"):format(feet(length - 1 - 3 * i), feet(run - 4.5)), true },
      { "width", inches(size), true }, { "length", inches(size), true }, { "height", inches(between(6, 36, 6)) } })
  end
end

local function put_array(house, rows)
  put("module_rows:" .. (#rows == 0 and " none" or ""))
  for _, one in ipairs(rows) do
    row(2, { name = one.name, { "model", house.module.name }, { "plane", "south", true },
      { "at", ("[%s, %s]"):format(inches(one.x), inches(one.y)), true }, { "orientation", "portrait", true },
      { "columns", one.columns, true }, { "rows", 1, true }, { "gap", "0.5 in", true } })
  end
  local module, step = house.module, pick { 1, 2 } * house.spacing
  put("racking:")
  fact(2, "model", "Hewn R10")
  fact(2, "mounting", "rails")
  fact(2, "rail_direction", "across the slope")
  fact(2, "rails_per_module", 2)
  fact(2, "rail_spacing", inches(module.length / 2))
  fact(2, "attachment_spacing", inches(step))
  fact(2, "cantilever", inches(between(12, 24, 3)))
  fact(2, "height_above_roof", inches(between(4, 8, 1)))
  fact(2, "gap_below_modules", inches(between(2, 5, 1)))
  fact(2, "module_gap", "0.5 in")
  fact(2, "tilt", "0°")
  fact(2, "weight", between(60, 200, 10) .. " lb")
  fact(2, "system_fire_class", "A")
  fact(2, "attachment_model", "Hewn F5")
  if #rows == 0 then return put("  rails: none\n  attachment_rows: none") end
  local rails, attachments = {}, {}
  for i, one in ipairs(rows) do
    for side = 1, 2 do
      local width = one.columns * (module.width + 0.5)
      rails[#rails + 1] = { name = ("rail-%d-%d"):format(i, side), x = one.x - 3, y = one.y + (side == 1 and 0.25 or 0.75) * module.length, length = width + 5 }
      local from = math.ceil((one.x + 2) / house.spacing) * house.spacing
      attachments[#attachments + 1] = { rail = rails[#rails], x = from, count = math.max(1, math.tointeger((one.x + width - from) // step) + 1) }
    end
  end
  put("  rails:")
  for _, rail in ipairs(rails) do
    row(4, { name = rail.name, { "plane", "south", true }, { "at", ("[%s, %s]"):format(inches(rail.x), inches(rail.y)), true }, { "length", inches(rail.length), true } })
  end
  put("  attachment_rows:")
  for i, one in ipairs(attachments) do
    row(4, { name = "feet-" .. i, { "model", "Hewn F5" }, { "plane", "south", true }, { "rail", one.rail.name, true },
      { "at", ("[%s, %s]"):format(inches(one.x), inches(one.rail.y)), true }, { "spacing", inches(step), true },
      { "count", one.count, true }, { "stands_on", "rafter" } })
  end
end

local function put_circuit(house, name, role, carries, from, to, volts, more)
  local size, ground = pick { "10 AWG", "10 AWG", "8 AWG" }, "10 AWG"
  local facts = { name = name, { "role", role }, { "carries", "[" .. carries .. "]", true }, { "from", from, true }, { "to", to, true },
    { "nominal_voltage", volts .. " V" }, { "conductor_size", more.size or size }, { "conductor_material", "copper" },
    { "insulation", more.insulation or "THWN-2" }, { "insulation_temperature", "90 °C" }, { "conductors", more.conductors or 4 },
    { "current_carrying_conductors", 2 }, { "egc_size", ground }, { "egc_material", "copper" },
    { "wiring_method", more.method or "EMT" } }
  local function add(key, value) facts[#facts + 1] = { key, value } end
  if not more.method then add("raceway_size", pick { "1/2 in", "3/4 in", "1 in" }) end
  add("length", feet(between(6, 90, 1)))
  add("ambient_temperature", house.high .. " °C")
  add("on_roof", more.on_roof and "yes" or "no")
  if more.on_roof then add("height_above_roof", inches(between(1, 6, 0.5))) end
  add("inside_building", more.on_roof and "no" or "yes")
  add("length_inside", feet(more.on_roof and 0 or between(2, 40, 1)))
  add("support_spacing", inches(more.method and 24 or 96))
  add("in_sunlight", more.on_roof and "yes" or "no")
  add("dc_and_ac_separated", "yes")
  add("ocpd", more.breaker and "circuit breaker" or "none")
  if more.breaker then add("ocpd_rating", more.breaker .. " A") end
  add("ocpd_ends", more.breaker and 1 or 0)
  add("terminal_temperature", "75 °C")
  if more.ampacity then add("ampacity", more.ampacity) end
  add("listings", more.insulation == "PV wire" and "[UL 4703]" or "none")
  item(2, facts)
end

-- Strings or branches, and what turns their current. Returns what the house's panel is fed by.
local function put_generation(house, rows)
  local micro, kind = house.system == "micro", house.system
  put((micro and "branches:" or "strings:") .. (#rows == 0 and " none" or ""))
  local inverter = kind == "converters" and "Brae H7600" or "Fenwick S6000"
  local per_inverter = kind == "converters" and 3 or 2
  for i, one in ipairs(rows) do
    if micro then
      row(2, { name = "branch-" .. i, { "modules", "[" .. one.name .. "]", true }, { "microinverter", "Fenwick M350" }, { "microinverters", one.columns } })
    else
      local facts = { name = "string-" .. i, { "modules", "[" .. one.name .. "]", true }, { "has_converters", kind == "converters" and "yes" or "no" },
        { "inverter", "inverter-" .. (i - 1) // per_inverter + 1, true }, { "input", kind == "converters" and 1 or (i - 1) % per_inverter + 1 }, { "fused", "no" } }
      if kind == "converters" then table.insert(facts, { "converter", house.module.converter }) end
      row(2, facts)
    end
  end
  put(micro and "strings: none" or "branches: none")
  put("combiners: none")
  local sources = {}
  local inverters = micro and 0 or (#rows + per_inverter - 1) // per_inverter
  put("inverters:" .. (inverters == 0 and " none" or ""))
  for i = 1, inverters do
    sources[i] = { name = "inverter-" .. i, amperes = kind == "converters" and 40 or 35 }
    item(2, { name = "inverter-" .. i, { "model", inverter }, { "location", pick { "garage", "outside wall" } }, { "readily_accessible", yes(0.95) },
      { "distance_to_array", feet(between(10, 90, 5)) },
      { "working_space", ("{depth: %s, width: 36 in, height: 8 ft, equipment_width: 14 in, facing: live parts to none, door_opens_90: yes, clear_of_storage: yes}"):format(feet(pick { 2.5, 3, 3.5, 4 })) } })
  end
  put("circuits:" .. (#rows == 0 and " none" or ""))
  for i in ipairs(rows) do
    if micro then
      sources[i] = { name = "branch-" .. i, amperes = 20 }
      put_circuit(house, "trunk-" .. i, "microinverter branch", "branch-" .. i, "branch-" .. i, "home-" .. i, 240,
        { size = "12 AWG", insulation = "trunk cable", method = "trunk cable", on_roof = true, breaker = 20, ampacity = "20 A", conductors = 3 })
      put_circuit(house, "home-" .. i, "microinverter branch", "branch-" .. i, "trunk-" .. i, "main", 240, { breaker = 20 })
    else
      local role = kind == "converters" and "converter output" or "PV source"
      local to = "inverter-" .. (i - 1) // per_inverter + 1
      put_circuit(house, "array-" .. i, role, "string-" .. i, "string-" .. i, "down-" .. i, 380, { insulation = "PV wire", method = "free air", on_roof = true, conductors = 2 })
      put_circuit(house, "down-" .. i, role, "string-" .. i, "array-" .. i, to, 380, {})
    end
  end
  for i = 1, inverters do
    put_circuit(house, "inverter-run-" .. i, "inverter output", "inverter-" .. i, "inverter-" .. i, "main", 240, { size = "8 AWG", breaker = sources[i].amperes })
  end
  return sources
end

local function put_service(sources)
  local main = pick { 100, 125, 150, 200 }
  local bus = pick { main, main, 225 }
  put("service:")
  fact(2, "rating", main .. " A")
  fact(2, "disconnect_rating", main .. " A")
  fact(2, "voltage", "240 V")
  fact(2, "voltage_to_ground", "120 V")
  fact(2, "phases", 1)
  fact(2, "conductor_size", pick { "2 AWG", "1/0 AWG", "2/0 AWG", "4/0 AWG" })
  fact(2, "conductor_material", pick { "copper", "aluminum" })
  fact(2, "conductor_ampacity", between(main, 230, 5) .. " A")
  fact(2, "available_fault_current", number(between(5, 21, 0.2)) .. " kA")
  fact(2, "work", pick { "replaced", "untouched", "untouched" })
  fact(2, "surge_protection", yes(0.7))
  fact(2, "emergency_disconnect", yes(0.7))
  put("  load_calculation:")
  fact(4, "floor_area", between(900, 3400, 50) .. " ft²")
  fact(4, "small_appliance_circuits", 2)
  fact(4, "laundry_circuits", 1)
  fact(4, "appliances", between(6, 20, 1) .. " kVA")
  fact(4, "motors", "0 VA")
  fact(4, "heating", pick { "0 VA", "5 kVA", "9.6 kVA" })
  fact(4, "cooling", pick { "0 VA", "3.6 kVA", "7.2 kVA" })
  fact(4, "ev_charging", pick { "0 VA", "0 VA", "9.6 kVA" })
  fact(4, "adds_air_conditioning", "no")
  put("panels:")
  item(2, { name = "main", { "is_service_panel", "yes", true }, { "fed_from", "none", true }, { "feeder", "none" }, { "status", pick { "new", "existing" } },
    { "location", pick { "garage", "outside wall", "basement" } }, { "detached_building", "no" }, { "main_lugs_only", "no" }, { "split_bus", "no" }, { "spaces", 40 },
    { "free_spaces", between(2, 16, 1) }, { "takes_tandems", "no" }, { "interrupting_rating", pick { 10, 22 } .. " kA" }, { "taps_allowed", "no" },
    { "working_space", "{depth: 3.5 ft, width: 36 in, height: 8 ft, equipment_width: 15 in, facing: live parts to none, door_opens_90: yes, clear_of_storage: yes}" } })
  put("    busbars:")
  item(6, { name = "bus", { "rating", bus .. " A" }, { "protecting_device", main .. " A" }, { "fed_at", "end" }, { "feed_through", "no" }, { "methods", "none" } })
  put("        breakers:")
  local function breaker(name, duty, amperes, poles, position, place, ...)
    local facts = { name = name, { "duty", duty, true }, { "rating", amperes .. " A" }, { "poles", poles }, { "place", place },
      { "interrupting_rating", pick { 10, 22 } .. " kA" }, { "listed_for_panel", "yes" }, { "status", "new" }, ... }
    if position then table.insert(facts, { "position", position }) end
    row(10, facts)
  end
  breaker("main-breaker", "main", main, 2, nil, "feed end")
  for i = 1, random(4, 9) do breaker("load-" .. i, "load", pick { 15, 20, 20, 30, 40, 50 }, pick { 1, 2 }, 2 * i, "between") end
  for i, source in ipairs(sources) do
    breaker("pv-" .. i, "source", source.amperes, 2, 41 - 2 * i > 0 and 41 - 2 * i or 1, i == 1 and "opposite end" or "between", { "serves", source.name, true },
      { "suitable_for_backfeed", "yes" }, { "fastened_in_place", "no" }, { "tandem", "no" }, { "protection", "none" })
  end
end

local function put_rest(house, sources)
  local source = sources[1] and sources[1].name or "main"
  put("disconnects:")
  local function disconnect(name, role, amperes, ...)
    row(2, { name = name, { "role", role, true }, { "rating", amperes .. " A" }, { "voltage_rating", "240 V" }, { "location", pick { "outside wall", "garage" } },
      { "readily_accessible", yes(0.95) }, { "lockable", "yes" }, { "load_break", "yes" }, { "count", 1 }, { "listings", "[UL 98]" }, ... })
  end
  disconnect("service-disconnect", "service", 200, { "service_rated", "yes" })
  if sources[1] then
    disconnect("pv-disconnect", "PV system", 60, { "of", source, true }, { "visible_open", "yes" }, { "distance_to_meter", feet(between(2, 14, 1)) })
    disconnect("shutdown-switch", "rapid shutdown", 30, { "of", source, true }, { "distance_to_meter", feet(between(2, 14, 1)) })
  end
  put("meters:\n  - {name: revenue, revenue: yes, meter_main: no, rating: 200 A, bidirectional: yes, location: outside wall}")
  put("other_sources: " .. "none")
  put("interconnection:")
  fact(2, "side", "load side")
  fact(2, "at", "main")
  fact(2, "nominal_voltage", "240 V")
  put("rapid_shutdown:")
  fact(2, "method", house.system == "micro" and "microinverters" or house.system == "strings" and "module-level devices" or "converters")
  fact(2, "device", house.system == "micro" and "Fenwick M350" or house.system == "strings" and "Brae K15" or house.module.converter)
  fact(2, "initiators", 1)
  fact(2, "initiator_location", "outside wall")
  fact(2, "initiator_readily_accessible", "yes")
  fact(2, "boundary", "1 ft")
  fact(2, "length_inside_building", feet(pick { 0, 0, 6 }))
  fact(2, "voltage_outside", pick { 0, 12, 30 } .. " V")
  fact(2, "voltage_inside", between(10, 90, 10) .. " V")
  fact(2, "time", between(5, 35, 5) .. " s")
  fact(2, "listings", "[UL 1741]")
  put("grounding:")
  fact(2, "bonding", "listed racking")
  fact(2, "pair_listed", "yes")
  fact(2, "array_egc_size", pick { "6 AWG", "8 AWG", "10 AWG" })
  fact(2, "array_egc_material", "copper")
  fact(2, "array_egc_protected", yes(0.7))
  fact(2, "gec_size", pick { "6 AWG", "4 AWG" })
  fact(2, "gec_material", "copper")
  fact(2, "electrodes", pick { "[ground rod]", "[concrete-encased, ground rod]", "[water pipe, ground rod]" })
  fact(2, "connected_to_building_system", "yes")
  fact(2, "ground_fault_protection", "yes")
  fact(2, "ground_fault_indication", "yes")
  fact(2, "solidly_grounded", "no")
  put("labels:")
  row(2, { name = "shutdown-placard", { "kind", "rapid shutdown", true }, { "place", "service equipment" }, { "text", "SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN" },
    { "letter_height", pick { "3/8 in", "1/4 in" } }, { "color", "black on yellow" }, { "reflective", "yes" }, { "permanent", "yes" } })
  row(2, { name = "directory", { "kind", "source directory", true }, { "place", "service equipment" }, { "text", "SOURCES OF POWER AND THEIR DISCONNECTS" },
    { "letter_height", "3/8 in" }, { "color", "any" }, { "permanent", "yes" } })
  put("papers:")
  for _, kind in ipairs { "site plan", "roof plan", "one-line diagram", "equipment data sheets", "label sheet" } do
    row(2, { name = (kind:gsub(" ", "-")), { "kind", kind, true }, { "state", chance(0.97) and "ready" or "missing", true }, { "date", "2026-07-20" } })
  end
  put("jobsite:")
  fact(2, "fall_protection", pick { "personal fall arrest", "personal fall arrest", "guardrail" })
  fact(2, "working_height", feet(house.eave))
  fact(2, "ladder_extension", feet(pick { 2, 3, 3, 4 }))
  fact(2, "ladder_tied", yes(0.9))
  fact(2, "overhead_line_distance", feet(between(6, 40, 1)))
  fact(2, "lifters", pick { 1, 2, 2 })
  fact(2, "rescue_plan", yes(0.9))
end

local function design(number_of)
  math.randomseed(seed, number_of)
  out = {}
  local house = house_of(number_of)
  local rows = rows_of(house)
  put_head(house)
  put("roof:")
  fact(2, "shape", "gable")
  fact(2, "fire_class", pick { "A", "C" })
  put("  planes:")
  put_plane(house, "south", between(135, 225, 5), true)
  put_plane(house, "north", between(0, 45, 5), false)
  put_array(house, rows)
  local sources = put_generation(house, rows)
  put_service(sources)
  put_rest(house, sources)
  return table.concat(out, "\n") .. "\n"
end

local function write(path, text)
  local file = assert(io.open(path, "wb"))
  assert(file:write(text))
  assert(file:close())
end

local list = {}
for number_of = 1, count do
  local inner = ("%s/%03d"):format(folder, (number_of - 1) // 1000)
  if (number_of - 1) % 1000 == 0 then assert(os.execute("mkdir -p '" .. inner:gsub("'", "'\\''") .. "'")) end
  list[number_of] = ("%s/design-%06d.yaml"):format(inner, number_of)
  write(list[number_of], design(number_of))
end
write(folder .. "/list", table.concat(list, "\n") .. (count > 0 and "\n" or ""))

-- Rapid shutdown, disconnects, places, panels, feeders, the service and how the array reaches it.
local plumb = require("plumb")
local e = require("electrical")
local pass, fail, open = e.pass, e.fail, e.open
local I1, BUS, MAIN, PV = "inverter:inverter-1", "busbar:main/bus", "panel:main", "panel:pv-panel"

local function with(model, old, new) return { model = { model[1], model[2], { { old, new } } } } end
local function more(row, key, value)
  row[key] = value
  return row
end
local S6000, K15, P225 = { "inverters", "Fenwick S6000" }, { "shutdown", "Brae K15" }, { "racking", "Alder P225" }

-- A small house with a subpanel: 100 A feeder of 1 AWG, tapped on its way by an inverter of 25 A.
local feeder = plumb.read(plumb.top .. "/rules/codes/nec/cases/given/feeder.yaml")
local function tapped(row) return more(row, "text", feeder) end
local lugs = { "feeder: sub-feeder\n    status: existing\n    main_lugs_only: no", "feeder: sub-feeder\n    status: existing\n    main_lugs_only: yes" }
local far_tap = { "ocpd_distance: 8 ft", "ocpd_distance: 20 ft" }

local gone = { { "place: opposite end, serves: inverter-1", "place: between, serves: inverter-1" } }
local function bus(rating)
  return { gone[1], { "rating: 225 A\n        protecting_device", "rating: " .. rating .. " A\n        protecting_device" } }
end
local untold_limit = { { "        protecting_device: 150 A\n", "" } }
local function generator(rest) return { { "other_sources: none", "other_sources:\n  - {name: gen, kind: generator, output_current: 20 A, " .. rest .. "}" } } end
local own_main = { "          - {name: roof-1, duty", "          - {name: own-main, duty: main, rating: 35 A, poles: 2, place: feed end, status: new}\n          - {name: roof-1, duty" }

return {
  -- 19 V of 80 V inside the boundary.
  pass("nec/rapid-shutdown", "quill", nil, "Voltage inside", 19, 80, 61 / 80),
  fail("nec/rapid-shutdown", "quill", nil, { { "voltage_inside: 19 V", "voltage_inside: 100 V" } }, "Voltage inside", 100, 80, -0.25),
  fail("nec/rapid-shutdown", "quill", nil, { { "length_inside_building: 0 ft", "length_inside_building: 6 ft" } }, "Distance inside", 6, 3, -1),
  open("nec/rapid-shutdown", "quill", nil, { { "  voltage_inside: 19 V\n", "" } }, "voltage_inside"),
  -- 2023 no longer knows the array without exposed metal; a person looks at it in 2020.
  fail("nec/rapid-shutdown", "quill", nil, { { "  method: converters\n", "  method: non-exposed array\n" } }, "This edition knows"),
  { rule = "nec/rapid-shutdown", kind = "review", design = "quill", book = "nec@2020", change = { { "  method: converters\n", "  method: non-exposed array\n" } } },
  fail("nec/rapid-shutdown", "quill", nil, { { "  method: converters\n", "  method: hazard control system\n" } }, "UL 3741", nil, nil, nil, { book = "nec@2020" }),
  { rule = "nec/rapid-shutdown", kind = "notApplicable", design = "quill", change = { { "structure: dwelling", "structure: carport\n      detached: yes", 2 } } },
  pass("nec/shutdown-initiator", "quill", nil, "Devices that set it off", 1, 1, 0),
  fail("nec/shutdown-initiator", "quill", nil, { { "  initiators: 1\n", "  initiators: 7\n" } }, "Devices that set it off, at the most", 7, 6, -1 / 6),
  fail("nec/shutdown-initiator", "quill", nil, { { "initiator_location: outside wall", "initiator_location: garage" } }, "The initiator is outside"),
  fail("nec/shutdown-initiator", "quill", nil, { { "  initiator: shutdown-switch", "  initiator: pv-breaker" } }, "that it names is outside"),
  open("nec/shutdown-initiator", "quill", nil, { { "  initiators: 1\n", "" } }, "initiators"),
  fail("nec/shutdown-initiator", "quill", nil, { { "  initiator: shutdown-switch", "  initiator: none" } }, "names what sets it off"),
  { rule = "nec/disconnect-rating", kind = "review", design = "quill", about = "disconnect:pv-breaker", change = { { "role: PV system, of: inverter-1", "role: PV system, of: none" } } },
  pass("nec/shutdown-device", "tern", nil, "Short-circuit current", 13.8, 15, 0.08),
  fail("nec/shutdown-device", "tern", nil, nil, "Short-circuit current", 13.8, 12, -0.15, with(K15, "maximum_current: 15 A", "maximum_current: 12 A")),
  open("nec/shutdown-device", "tern", nil, nil, "maximum_current", with(K15, "maximum_current: 15 A", "maximum_current:")),

  pass("nec/pv-disconnect", "tern", nil, "Switches or breakers", 1, 1, 0),
  fail("nec/pv-disconnect", "tern", nil, { { "role: PV system", "role: AC" } }, "Switches or breakers", 0, 1, -1),
  fail("nec/pv-disconnect", "tern", nil, { { "readily_accessible: yes, handle_height: 5 ft, locked_or_tool: yes, lockable: yes, visible_open: yes, load_break: yes, service_rated: yes", "readily_accessible: yes, handle_height: 5 ft, locked_or_tool: no, lockable: yes, visible_open: yes, load_break: yes, service_rated: yes" } }, "locks or needs a tool"),
  pass("nec/pv-disconnect", "tern", nil, "readily accessible", nil, nil, nil, { book = "nec@2017", change = { { "readily_accessible: yes, handle_height: 5 ft, locked_or_tool: yes, lockable: yes, visible_open: yes, load_break: yes, service_rated: yes", "readily_accessible: yes, handle_height: 5 ft, locked_or_tool: no, lockable: yes, visible_open: yes, load_break: yes, service_rated: yes" } } }),
  open("nec/pv-disconnect", "tern", nil, { { "readily_accessible: yes, handle_height: 5 ft, locked_or_tool: yes, lockable: yes, visible_open: yes, load_break: yes, service_rated: yes", "handle_height: 5 ft, locked_or_tool: yes, lockable: yes, visible_open: yes, load_break: yes, service_rated: yes" } }, "readily_accessible"),
  pass("nec/disconnect-rating", "quill", "disconnect:pv-breaker", "125 % of the output", 40, 40, 0),
  fail("nec/disconnect-rating", "quill", "disconnect:pv-breaker", { { "of: inverter-1, rating: 40 A", "of: inverter-1, rating: 35 A" } }, "125 % of the output", 35, 40, -0.125),
  open("nec/disconnect-rating", "quill", "disconnect:pv-breaker", { { "of: inverter-1, rating: 40 A, ", "of: inverter-1, " } }, "rating"),
  -- 1.25 x 27.55 A of both branches.
  pass("nec/disconnect-rating", "moss", "disconnect:pv-disconnect", "sources behind it", 60, 34.4375, 25.5625 / 34.4375),
  pass("nec/equipment-isolation", "tern", I1, "built in"),
  fail("nec/equipment-isolation", "tern", I1, nil, "built in", nil, nil, nil, with(S6000, "dc_disconnect: yes", "dc_disconnect: no")),
  pass("nec/equipment-isolation", "tern", I1, "Its distance", 8, 10, 0.2, more(with(S6000, "dc_disconnect: yes", "dc_disconnect: no"), "change",
    { { "disconnects:\n", "disconnects:\n  - {name: dc, role: DC, of: inverter-1, rating: 60 A, voltage_rating: 600 V, within_sight: yes, distance: 8 ft}\n" } })),
  fail("nec/equipment-isolation", "tern", I1, { { "disconnects:\n", "disconnects:\n  - {name: dc, role: DC, of: inverter-1, rating: 60 A, voltage_rating: 600 V, lockable: no, within_sight: yes, distance: 12 ft}\n" } },
    "Its distance", 12, 10, -0.2, with(S6000, "dc_disconnect: yes", "dc_disconnect: no")),
  open("nec/equipment-isolation", "tern", I1, nil, "dc_disconnect", with(S6000, "dc_disconnect: yes", "dc_disconnect:")),

  pass("nec/inverter-working-space", "tern", I1, "Depth", 4, 3, 1 / 3),
  fail("nec/inverter-working-space", "tern", I1, { { "{depth: 4 ft, width: 36 in, height: 8 ft, equipment_width: 14 in, facing: live parts to none", "{depth: 3.25 ft, width: 36 in, height: 8 ft, equipment_width: 14 in, facing: live parts to ground" } },
    "Depth", 3.25, 3.5, -0.25 / 3.5), -- above 150 V to ground
  open("nec/inverter-working-space", "tern", I1, { { "{depth: 4 ft, width: 36 in, height: 8 ft, equipment_width: 14 in,", "{width: 36 in, height: 8 ft, equipment_width: 14 in," } }, "depth"),
  pass("nec/panel-working-space", "tern", MAIN, "Width", 36, 30, 0.2),
  fail("nec/panel-working-space", "tern", MAIN, { { "width: 36 in, height: 8 ft, equipment_width: 15 in", "width: 24 in, height: 8 ft, equipment_width: 15 in" } }, "Width", 24, 30, -0.2),
  -- 3.25 ft is enough at 120 V to ground with grounded parts across.
  pass("nec/panel-working-space", "tern", MAIN, "Depth", 3.25, 3, 0.25 / 3, { change = { { "{depth: 4 ft, width: 36 in, height: 8 ft, equipment_width: 15 in, facing: live parts to none", "{depth: 3.25 ft, width: 36 in, height: 8 ft, equipment_width: 15 in, facing: live parts to ground" } } }),
  open("nec/panel-working-space", "tern", MAIN, { { "width: 36 in, height: 8 ft, equipment_width: 15 in, facing: live parts to none,", "width: 36 in, height: 8 ft, equipment_width: 15 in," } }, "facing"),
  pass("nec/panel-place", "quill", MAIN, "clothes closet"),
  fail("nec/panel-place", "quill", MAIN, { { "    location: garage\n    readily_accessible: yes\n    handle_height", "    location: clothes closet\n    readily_accessible: yes\n    handle_height" } }, "clothes closet"),
  open("nec/panel-place", "quill", MAIN, { { "    location: garage\n    readily_accessible: yes\n    handle_height", "    readily_accessible: yes\n    handle_height" } }, "location"),
  pass("nec/service-voltage", "quill", "service:service", "against that between", 120, 240, 0.5),
  fail("nec/service-voltage", "quill", "service:service", { { "voltage_to_ground: 120 V", "voltage_to_ground: 277 V" } }, "against that between", 277, 240, -37 / 240),
  open("nec/service-voltage", "quill", "service:service", { { "  voltage_to_ground: 120 V\n", "" } }, "voltage_to_ground"),
  pass("nec/lone-electrode", "quill", nil, "asks for no other one"),
  fail("nec/lone-electrode", "quill", nil, { { "electrodes: [concrete-encased, ground rod]", "electrodes: [ground rod]\n  rods: 1\n  rod_resistance: 30 Ω" } }, "resistance", 30, 25, -0.2),
  open("nec/lone-electrode", "quill", nil, { { "electrodes: [concrete-encased, ground rod]", "electrodes: [ground rod]" } }, "rods"),
  pass("nec/circuit-voltage", "tern", "circuit:inverter-run", "against that of", 240, 240),
  fail("nec/circuit-voltage", "tern", "circuit:inverter-run", { { "to: pv-disconnect\n    nominal_voltage: 240 V", "to: pv-disconnect\n    nominal_voltage: 120 V" } }, "against that of", 120, 240, -0.5),
  open("nec/circuit-voltage", "tern", "circuit:inverter-run", { { "to: pv-disconnect\n    nominal_voltage: 240 V\n", "to: pv-disconnect\n" } }, "nominal_voltage"),
  pass("nec/parallel-conductors", "tern", "circuit:service-run", "1/0 AWG is the least", 133.1, 105.6, nil, { change = { { "    to: main\n    nominal_voltage: 240 V", "    to: main\n    parallel_sets: 2\n    nominal_voltage: 240 V" } } }),
  fail("nec/parallel-conductors", "tern", "circuit:inverter-run", { { "to: pv-disconnect\n    nominal_voltage: 240 V", "to: pv-disconnect\n    parallel_sets: 2\n    nominal_voltage: 240 V" } }, "1/0 AWG is the least", 16.51, 105.6),
  open("nec/parallel-conductors", "tern", "circuit:inverter-run", { { "to: pv-disconnect\n    nominal_voltage: 240 V\n    conductor_size: 8 AWG", "to: pv-disconnect\n    parallel_sets: 2\n    nominal_voltage: 240 V" } }, "conductor_size"),
  pass("nec/inverter-place", "quill", I1, "bathroom"),
  fail("nec/inverter-place", "quill", I1, { { "    location: garage\n    readily_accessible: yes\n    distance", "    location: bathroom\n    readily_accessible: yes\n    distance" } }, "bathroom"),
  open("nec/inverter-place", "quill", I1, { { "    location: garage\n    readily_accessible: yes\n    distance", "    readily_accessible: yes\n    distance" } }, "location"),

  -- 150 A + 1.25 x 32 A = 190 A; exactly at the bus it stands.
  pass("nec/busbar", "quill", BUS, "Protecting device plus", 190, 225, 35 / 225),
  pass("nec/busbar", "quill", BUS, "Protecting device plus", 190, 190, 0, { change = bus(190) }),
  fail("nec/busbar", "quill", BUS, bus(189), "Protecting device plus", 190, 189, -1 / 189),
  open("nec/busbar", "quill", BUS, untold_limit, "protecting_device"),
  -- 150 A + 1.25 x 60 A on 225 A, at any place.
  pass("nec/busbar", "quill", BUS, "Protecting device plus", 225, 225, 0, more(with({ "inverters", "Brae H7600" }, "output_current: 32 A", "output_current: 60 A"), "change", { gone[1] })),
  pass("nec/busbar", "moss", BUS, "The source breaker is at the end"),
  pass("nec/busbar", "moss", "busbar:pv-panel/bus", "All breakers but the main", 40, 60, 1 / 3),
  -- The only breaker of the inverter is one that goes: the bus waits for the one that comes.
  open("nec/busbar", "quill", BUS, { { "protection: none, interrupting_rating: 22 kA, status: new", "protection: none, interrupting_rating: 22 kA, status: removed" } }, "breakers"),
  -- A power control system: 150 A + 20 A on 175 A, from 2020 on; its listing and settings a person looks at.
  { rule = "nec/busbar", kind = "review", design = "quill", about = BUS, change = { gone[1], { "rating: 225 A\n        protecting_device", "rating: 175 A\n        protecting_device" },
    { "        methods: none", "        methods: [power control system]\n        power_control_limit: 20 A" } } },
  -- The sum of breakers counts only where the design names it: the list of breakers may be short, and the label hangs on it.
  fail("nec/busbar", "moss", "busbar:pv-panel/bus", { { "        methods: [sum of breakers]", "        methods: none" } }, "names the sum of breakers"),
  fail("nec/busbar", "quill", BUS, { gone[1], { "rating: 225 A\n        protecting_device", "rating: 175 A\n        protecting_device" },
    { "        methods: none", "        methods: [power control system]\n        power_control_limit: 20 A" } }, "This edition knows", nil, nil, nil, { book = "nec@2017" }),
  { rule = "nec/busbar", kind = "review", design = "quill", about = BUS, change = { bus(189)[1], bus(189)[2], { "        methods: none", "        methods: [engineered]" } } },
  -- Existing PV on the same bus counts, a generator behind an interlock does not: 150 A + 1.25 x (32 + 16) A.
  pass("nec/busbar", "quill", BUS, "Protecting device plus", 210, 225, 15 / 225, { change = { { "other_sources: none", "other_sources:\n  - {name: old-pv, kind: existing PV, output_current: 16 A, parallel: yes}" },
    { "          - {name: pv, duty", "          - {name: old, duty: source, rating: 20 A, poles: 2, place: opposite end, serves: old-pv, status: existing}\n          - {name: pv, duty" } } }),
  pass("nec/busbar", "quill", BUS, "Protecting device plus", 190, 225, 35 / 225, { change = generator("parallel: no, interlocked: yes") }),
  { rule = "nec/busbar", kind = "notApplicable", design = "tern", about = BUS }, -- supply side

  pass("nec/source-breaker", "quill", "breaker:main/bus/pv", "Suitable for backfeed"),
  fail("nec/source-breaker", "quill", "breaker:main/bus/pv", { { "suitable_for_backfeed: yes", "suitable_for_backfeed: no" } }, "Suitable for backfeed"),
  open("nec/source-breaker", "quill", "breaker:main/bus/pv", { { "suitable_for_backfeed: yes, ", "" } }, "suitable_for_backfeed"),
  fail("nec/source-breaker", "quill", "breaker:main/bus/pv", { { "protection: none", "protection: GFCI, protection_listed_for_backfeed: no" } }, "listed for backfeed"),
  pass("nec/source-breaker", "moss", "breaker:main/bus/pv", "Listed for this panel"), -- a feeder's breaker with sources behind it
  pass("nec/connection-breaker", "quill", nil, "against its breaker", 40, 40),
  fail("nec/connection-breaker", "quill", nil, { { "  ocpd_rating: 40 A\n  nominal", "  ocpd_rating: 60 A\n  nominal" } }, "against its breaker", 60, 40),
  open("nec/connection-breaker", "quill", nil, { { "  ocpd_rating: 40 A\n  nominal", "  nominal" } }, "ocpd_rating"),
  -- Marked 32 A: 40 A exactly; 7 700 W / 240 V would ask for 40.1 A.
  pass("nec/inverter-breaker", "quill", I1, "125 % of the marked", 40, 40, 0),
  pass("nec/inverter-breaker", "quill", I1, "125 % of the marked", 40, 40, 0, with({ "inverters", "Brae H7600" }, "rated_power: 7600 W", "rated_power: 7700 W")),
  fail("nec/inverter-breaker", "quill", I1, { { "duty: source, rating: 40 A", "duty: source, rating: 35 A" } }, "125 % of the marked", 35, 40, -0.125),
  fail("nec/inverter-breaker", "quill", I1, { { "duty: source, rating: 40 A", "duty: source, rating: 60 A" } }, "the maker allows", 60, 50, -0.2),
  fail("nec/inverter-breaker", "quill", I1, { { "duty: source, rating: 40 A", "duty: source, rating: 50 A" } }, "next standard size", 50, 40, -0.25, { level = "warning" }),
  open("nec/inverter-breaker", "quill", I1, { { "duty: source, rating: 40 A, ", "duty: source, " } }, "rating"),
  pass("nec/inverter-breaker", "tern", I1, "125 % of the marked", 35, 31.25, 0.12), -- of the supply-side connection
  -- 7.6 A need 9.5 A: a 10 A device from 2023, 15 A before.
  pass("nec/inverter-breaker", "quill", I1, "next standard size", 10, 10, 0, more(with({ "inverters", "Brae H7600" }, "rated_power: 7600 W\n    output_current: 32 A", "rated_power: 1800 W\n    output_current: 7.6 A"), "change", { { "duty: source, rating: 40 A", "duty: source, rating: 10 A" } })),
  pass("nec/inverter-breaker", "quill", I1, "next standard size", 10, 15, 1 / 3, more(more(with({ "inverters", "Brae H7600" }, "rated_power: 7600 W\n    output_current: 32 A", "rated_power: 1800 W\n    output_current: 7.6 A"), "change", { { "duty: source, rating: 40 A", "duty: source, rating: 10 A" } }), "book", "nec@2020")),

  pass("nec/feeder-sources", "moss", PV, "Ampacity of the feeder", 50, 34.4375, 15.5625 / 34.4375),
  fail("nec/feeder-sources", "moss", PV, { { "    conductor_size: 8 AWG", "    conductor_size: 12 AWG" } }, "Ampacity of the feeder", 25, 34.4375, -9.4375 / 34.4375),
  open("nec/feeder-sources", "moss", PV, { { "    conductor_size: 8 AWG\n", "" } }, "conductor_size"),
  tapped(pass("nec/feeder-connection", nil, nil, "Device at the end", 100, 130, 30 / 130)),
  tapped(fail("nec/feeder-connection", nil, nil, { lugs }, "Ampacity of the feeder", 130, 131.25, -1.25 / 131.25)),
  tapped(open("nec/feeder-connection", nil, nil, { lugs, { "    ocpd_rating: 100 A\n", "" } }, "ocpd_rating")),
  -- 8 ft: a tenth, and the 35 A in which it ends. 20 ft: a third of 100 A + 1.25 x 25 A, from 2023 of 100 A + 35 A.
  tapped(pass("nec/feeder-tap", nil, "circuit:tap", "Ampacity of the tap", 35, 35, 0)),
  tapped(fail("nec/feeder-tap", nil, "circuit:tap", { far_tap }, "Ampacity of the tap", 35, 45, -10 / 45)),
  tapped(fail("nec/feeder-tap", nil, "circuit:tap", { far_tap }, "Ampacity of the tap", 35, 43.75, -8.75 / 43.75, { book = "nec@2020" })),
  tapped(fail("nec/feeder-tap", nil, "circuit:tap", { far_tap }, "Ampacity of the tap", 35, 43.75, -8.75 / 43.75, { book = "nec@2017" })),
  tapped(open("nec/feeder-tap", nil, "circuit:tap", { { "    ocpd_distance: 8 ft\n", "" } }, "ocpd_distance")),

  pass("nec/supply-side", "tern", nil, "Ampacity of the conductors", 65, 31.25, 1.08),
  fail("nec/supply-side", "tern", nil, { { "    conductor_size: 6 AWG", "    conductor_size: 8 AWG" } }, "6 AWG copper"),
  { rule = "nec/supply-side", kind = "review", design = "tern", book = "nec@2017", change = { { "    conductor_size: 6 AWG", "    conductor_size: 8 AWG" } } }, -- 50 A, no floor, but 230.42(B)
  fail("nec/supply-side", "tern", nil, { { "  ocpd_rating: 35 A\n  ocpd_distance", "  ocpd_rating: 30 A\n  ocpd_distance" } }, "against 125 % of the sources", nil, 31.25, nil, { any = true }),
  open("nec/supply-side", "tern", nil, { { "    conductor_size: 6 AWG\n", "" } }, "conductor_size"),
  pass("nec/supply-side-device", "tern", nil, "part of the disconnect"),
  pass("nec/supply-side-device", "tern", nil, "Conductor length", 6, 10, 0.4, { book = "nec@2017" }),
  fail("nec/supply-side-device", "tern", nil, { { "ocpd_distance: 6 ft", "ocpd_distance: 12 ft" } }, "Conductor length", 12, 10, -0.2, { book = "nec@2017" }),
  fail("nec/supply-side-device", "tern", nil, { { "ocpd_distance: 6 ft", "ocpd_distance: 12 ft" }, { "  inside_building: no\n  listed_taps", "  inside_building: yes\n  listed_taps" } }, "Conductor length", 12, 10, -0.2, { book = "nec@2020" }),
  open("nec/supply-side-device", "tern", nil, { { "  ocpd_distance: 6 ft\n", "" } }, "ocpd_distance", { book = "nec@2017" }),
  pass("nec/supply-side-equipment", "tern", nil, "The taps are listed"),
  fail("nec/supply-side-equipment", "tern", nil, { { "listed_taps: yes", "listed_taps: no" } }, "The taps are listed"),
  fail("nec/supply-side-equipment", "tern", nil, { { "  at: service-run\n", "  at: main\n" } }, "The panel's maker allows taps"), -- a meter-main that forbids them
  open("nec/supply-side-equipment", "tern", nil, { { "  listed_taps: yes\n", "" } }, "listed_taps"),

  pass("nec/panel-fault-current", "quill", MAIN, "Interrupting rating of the panel", 22, 9.2, 12.8 / 9.2),
  fail("nec/panel-fault-current", "quill", MAIN, { { "available_fault_current: 9.2 kA", "available_fault_current: 25 kA" } }, "Interrupting rating of the panel", 22, 25, -0.12),
  open("nec/panel-fault-current", "quill", MAIN, { { "  available_fault_current: 9.2 kA\n", "" } }, "available_fault_current"),
  { rule = "nec/panel-fault-current", kind = "review", design = "moss", about = PV, change = { { "available_fault_current: 9.2 kA", "available_fault_current: 12 kA" } } },
  pass("nec/disconnect-fault-current", "quill", "disconnect:pv-disconnect", "withstand rating", 10, 9.2, 0.8 / 9.2),
  fail("nec/disconnect-fault-current", "quill", "disconnect:service-disconnect", { { "available_fault_current: 9.2 kA", "available_fault_current: 27.5 kA" } }, "withstand rating", 22, 27.5, -0.2),
  { rule = "nec/disconnect-fault-current", kind = "review", design = "quill", about = "disconnect:pv-disconnect", change = { { "available_fault_current: 9.2 kA", "available_fault_current: 12.5 kA" } } }, -- away from the service
  open("nec/disconnect-fault-current", "quill", "disconnect:pv-disconnect", { { "interrupting_rating: 10 kA, ", "" } }, "interrupting_rating"),
  pass("nec/panel-spaces", "quill", MAIN, "Spaces that the new breakers take", 11, 14, 3 / 14),
  fail("nec/panel-spaces", "quill", MAIN, { { "free_spaces: 14", "free_spaces: 10" } }, "Spaces that the new breakers take", 11, 10, -0.1),
  fail("nec/panel-spaces", "quill", MAIN, { { "tandem: no", "tandem: yes" } }, "takes tandems"),
  open("nec/panel-spaces", "quill", MAIN, { { "    free_spaces: 14\n", "" } }, "free_spaces"),
  pass("nec/panel-kind", "quill", MAIN, "Protecting device against the bus", 150, 225, 1 / 3),
  fail("nec/panel-kind", "quill", MAIN, bus(125), "Protecting device against the bus", 150, 125, -0.2),
  open("nec/panel-kind", "quill", MAIN, untold_limit, "protecting_device"),
  pass("nec/panel-kind", "moss", PV, "That device against the bus", 35, 60, 25 / 60),
  { rule = "nec/panel-kind", kind = "review", design = "quill", about = MAIN, change = { { "split_bus: no", "split_bus: yes" } } },
  pass("nec/protecting-device", "quill", MAIN, "against the main breaker", 150, 150),
  fail("nec/protecting-device", "quill", MAIN, { { "duty: main, rating: 150 A", "duty: main, rating: 200 A" } }, "against the main breaker", 150, 200),
  fail("nec/protecting-device", "quill", MAIN, { { "duty: main, rating: 150 A", "duty: main, rating: 200 A" }, { "protecting_device: 150 A", "protecting_device: 200 A" } }, "against the service disconnect", 200, 150),
  fail("nec/protecting-device", "quill", MAIN, { { "is_service_panel: yes", "is_service_panel: no" } }, "shows the feeder"),
  open("nec/protecting-device", "quill", MAIN, untold_limit, "protecting_device"),
  pass("nec/protecting-device", "moss", PV, "against the feeder's", 35, 35),
  pass("nec/panel-model", "quill", MAIN, "largest main", 150, 200, 0.25),
  fail("nec/panel-model", "quill", MAIN, { { "protecting_device: 150 A", "protecting_device: 225 A" } }, "largest main", 225, 200, -0.125),
  open("nec/panel-model", "quill", MAIN, nil, "maximum_main", with(P225, "maximum_main: 200 A", "maximum_main:")),
  pass("nec/detached-building", "moss", PV, "Disconnects of the feeder", 1, 1, 0, { change = {
    { "detached_building: no\n    main_lugs_only: yes", "detached_building: yes\n    entrance_run: 0 ft\n    dwelling: no\n    own_electrodes: yes\n    main_lugs_only: no" }, own_main } }),
  fail("nec/detached-building", "moss", PV, { { "detached_building: no\n    main_lugs_only: yes", "detached_building: yes\n    own_electrodes: yes\n    main_lugs_only: yes" } },
    "Disconnects of the feeder", 0, 1, -1),
  open("nec/detached-building", "moss", PV, { { "detached_building: no\n    main_lugs_only: yes", "detached_building: yes\n    main_lugs_only: no" }, own_main }, "own_electrodes"),

  pass("nec/panel-neutral", "moss", PV, "kept apart from ground"),
  fail("nec/panel-neutral", "moss", PV, { { "neutral_bonded: no", "neutral_bonded: yes" } }, "kept apart from ground"),
  open("nec/panel-neutral", "moss", PV, { { "    neutral_bonded: no\n", "" } }, "neutral_bonded"),

  pass("nec/other-source", "quill", "source:gen", "interlock", nil, nil, nil, { change = generator("parallel: no, interlocked: yes") }),
  fail("nec/other-source", "quill", "source:gen", generator("parallel: no, interlocked: no"), "interlock"),
  fail("nec/other-source", "quill", "source:gen", generator("parallel: yes"), "plain generator"),
  open("nec/other-source", "quill", "source:gen", generator("parallel: no"), "interlocked"),
  pass("nec/surge-protection", "quill", nil, "surge-protective"),
  fail("nec/surge-protection", "quill", nil, { { "surge_protection: yes", "surge_protection: no" } }, "surge-protective", nil, nil, nil, { book = "nec@2020" }),
  { rule = "nec/surge-protection", kind = "notApplicable", design = "quill", book = "nec@2017", change = { { "surge_protection: yes", "surge_protection: no" } } },
  open("nec/surge-protection", "quill", nil, { { "  surge_protection: yes\n", "" } }, "surge_protection"),
  pass("nec/feeder-surge-protection", "moss", "panel:pv-panel", "right beside it", nil, nil, nil,
    { change = { { "name: roof-2, duty: source", "name: roof-2, duty: load" }, { "surge_protection: no", "surge_protection: yes" } } }),
  fail("nec/feeder-surge-protection", "moss", "panel:pv-panel", { { "name: roof-2, duty: source", "name: roof-2, duty: load" } }, "right beside it"),
  open("nec/feeder-surge-protection", "moss", "panel:pv-panel",
    { { "name: roof-2, duty: source", "name: roof-2, duty: load" }, { "    surge_protection: no\n", "" } }, "surge_protection"),
  pass("nec/emergency-disconnect", "quill", nil, "emergency disconnect outside"),
  fail("nec/emergency-disconnect", "quill", nil, { { "emergency_disconnect: yes", "emergency_disconnect: no" } }, "emergency disconnect outside"),
  { rule = "nec/emergency-disconnect", kind = "notApplicable", design = "quill", book = "nec@2017" },
  open("nec/emergency-disconnect", "quill", nil, { { "  emergency_disconnect: yes\n", "" } }, "emergency_disconnect"),
  -- 150 A: 1 AWG copper.
  pass("nec/service-conductors", "quill", nil, "1 AWG is needed", 133.1, 83.69),
  fail("nec/service-conductors", "quill", nil, { { "  conductor_size: 2/0 AWG", "  conductor_size: 2 AWG" } }, "1 AWG is needed", 66.36, 83.69, -17.33 / 83.69),
  fail("nec/service-conductors", "quill", nil, { { "  rating: 150 A\n  disconnect_rating", "  rating: 100 A\n  disconnect_rating" }, { "  conductor_size: 2/0 AWG", "  conductor_size: 4 AWG" } }, "1 AWG is needed", 41.74, 83.69),
  open("nec/service-conductors", "quill", nil, { { "  conductor_size: 2/0 AWG\n", "" } }, "conductor_size"),
  -- 3 x 1 500 + 3 x 1 500 + 14 000 VA: 10 kVA + 40 % of 13 kVA, and 7.2 kVA of cooling, at 240 V.
  pass("nec/service-load", "quill", nil, "Load of the dwelling", (10000 + 0.4 * 13000 + 7200) / 240, 150),
  fail("nec/service-load", "quill", nil, { { "appliances: 14 kVA", "appliances: 80 kVA\n    existing_peak: 40 kVA" } }, "metered peak", 1.25 * 40000 / 240, 150),
  open("nec/service-load", "quill", nil, { { "    floor_area: 1500 ft²\n", "" } }, "floor_area"),
  pass("nec/service-grouping", "quill", nil, "Switches or breakers", 1, 6, 5 / 6),
  fail("nec/service-grouping", "quill", nil, { { "role: service, rating: 150 A", "role: service, count: 7, rating: 150 A" } }, "Switches or breakers", 7, 6, -1 / 6),
  open("nec/service-grouping", "quill", nil, { { "    is_service_panel: yes\n", "" } }, "is_service_panel"),
  { rule = "nec/service-grouping", kind = "review", design = "quill", change = { { "role: service, rating: 150 A", "role: service, count: 2, rating: 150 A" } } },
  pass("nec/service-equipment", "quill", "disconnect:service-disconnect", "Rating against the service's", 150, 150, 0),
  fail("nec/service-equipment", "quill", "disconnect:service-disconnect", { { "role: service, rating: 150 A", "role: service, rating: 125 A" } }, "Rating against the service's", 125, 150, -25 / 150),
  open("nec/service-equipment", "quill", "disconnect:service-disconnect", { { "load_break: yes, service_rated: yes, ", "load_break: yes, " } }, "service_rated"),
  pass("nec/service-disconnect", "quill", nil, "Rating of the service disconnect", 150, 100, 0.5),
  fail("nec/service-disconnect", "quill", nil, { { "  disconnect_rating: 150 A", "  disconnect_rating: 60 A" } }, "Rating of the service disconnect", 60, 100, -0.4),
  open("nec/service-disconnect", "quill", nil, { { "  disconnect_rating: 150 A\n", "" } }, "disconnect_rating"),
  { rule = "nec/service-disconnect", kind = "review", design = "tern", change = { { "  disconnect_rating: 150 A", "  disconnect_rating: 60 A" } } },
  pass("nec/load-break", "quill", "disconnect:pv-disconnect", "breaks its load"),
  -- Two converter strings of 15 A are 30 A exactly: what only isolates is a person's.
  { rule = "nec/load-break", kind = "review", design = "quill", about = "disconnect:pv-disconnect",
    change = { { "role: utility, of: inverter-1", "role: DC, of: inverter-1" }, { "visible_open: yes, load_break: yes", "visible_open: yes, load_break: no" } } },
  fail("nec/load-break", "quill", "disconnect:pv-disconnect", { { "visible_open: yes, load_break: yes", "visible_open: yes, load_break: no" } }, "breaks its load"),
  open("nec/load-break", "quill", "disconnect:pv-disconnect", { { "visible_open: yes, load_break: yes", "visible_open: yes" } }, "load_break"),
  pass("nec/disconnect-place", "quill", "disconnect:pv-disconnect", "Not in a bathroom"),
  fail("nec/disconnect-place", "quill", "disconnect:pv-disconnect", { { "role: utility, of: inverter-1, rating: 60 A, voltage_rating: 240 V, location: outside wall", "role: utility, of: inverter-1, rating: 60 A, voltage_rating: 240 V, location: bathroom" } }, "Not in a bathroom"),
  open("nec/disconnect-place", "quill", "disconnect:pv-disconnect", { { "role: utility, of: inverter-1, rating: 60 A, voltage_rating: 240 V, location: outside wall", "role: utility, of: inverter-1, rating: 60 A, voltage_rating: 240 V" } }, "location"),
  pass("nec/disconnect-listing", "quill", "disconnect:pv-disconnect", "UL 98, UL 489"),
  fail("nec/disconnect-listing", "quill", "disconnect:pv-disconnect", { { "interrupting_rating: 10 kA, listings: [UL 98]", "interrupting_rating: 10 kA, listings: none" } }, "UL 98, UL 489"),
  open("nec/disconnect-listing", "quill", "disconnect:pv-disconnect", { { "interrupting_rating: 10 kA, listings: [UL 98]", "interrupting_rating: 10 kA" } }, "listings"),
  pass("nec/disconnect-working-space", "quill", "disconnect:pv-disconnect", "Depth", 4, 3, 1 / 3),
  fail("nec/disconnect-working-space", "quill", "disconnect:pv-disconnect",
    { { "listings: [UL 98], working_space: {depth: 4 ft", "listings: [UL 98], working_space: {depth: 2 ft" } }, "Depth", 2, 3, -1 / 3),
  open("nec/disconnect-working-space", "quill", "disconnect:pv-disconnect",
    { { "listings: [UL 98], working_space: {depth: 4 ft, ", "listings: [UL 98], working_space: {" } }, "depth"),
  pass("nec/neutral", "quill", "circuit:inverter-run", "against the ungrounded", 16.51, 16.51, 0),
  fail("nec/neutral", "quill", "circuit:inverter-run", { { "neutral_size: 8 AWG", "neutral_size: 12 AWG" } }, "what a fault asks for", 6.53, 10.38, 6.53 / 10.38 - 1),
  open("nec/neutral", "quill", "circuit:inverter-run", { { "    neutral: sensing only\n", "" } }, "neutral"),
  -- From 2020 currents against the conductors; in 2017 device ratings against the service.
  pass("nec/service-sources", "quill", nil, "Rated currents", 32, 175, 143 / 175),
  pass("nec/service-sources", "quill", nil, "Ratings of all source", 40, 150, 110 / 150, { book = "nec@2017" }),
  fail("nec/service-sources", "quill", nil, { { "conductor_ampacity: 175 A", "conductor_ampacity: 30 A" } }, "Rated currents", 32, 30, -2 / 30),
  -- 400 A told of 2/0 AWG copper: 175 A are believed.
  fail("nec/service-sources", "quill", nil, { { "conductor_ampacity: 175 A", "conductor_ampacity: 400 A" } }, "Ampacity told", 400, 175, -225 / 175, { level = "warning" }),
  open("nec/service-sources", "quill", nil, { { "  conductor_size: 2/0 AWG\n", "" } }, "service: conductor_size"),
  open("nec/service-sources", "quill", nil, { { "  conductor_ampacity: 175 A\n", "" } }, "conductor_ampacity"),
}

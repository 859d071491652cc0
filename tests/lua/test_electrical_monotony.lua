-- Which way a margin goes when one fact grows, told per rule and tried at random; and the known exceptions.
local lu = require("luaunit")
local plumb = require("plumb")
local electrical = require("electrical")

-- rule, sample, about, what, the text to change (%s takes the number), range, direction, whole numbers?
local rows = {
  { "nec/string-voltage", "tern", "string:string-1", "on or in a dwelling", "design_low_temperature: {is: -12 °C,", "design_low_temperature: {is: %s °C,", -40, 24, "up" },
  { "nec/string-window", "tern", "string:string-1", "lower end", "design_high_temperature: 33 °C", "design_high_temperature: %s °C", 10, 55, "down" },
  { "nec/circuit-ampacity", "tern", "circuit:inverter-run", "after corrections", "length: 8 ft\n    ambient_temperature: 33 °C", "length: 8 ft\n    ambient_temperature: %s °C", 15, 60, "down" },
  { "nec/circuit-ampacity", "quill", "circuit:inverter-run", "after corrections", "conductors: 4\n    current_carrying_conductors: 2\n    neutral_size", "conductors: 4\n    current_carrying_conductors: %s\n    neutral_size", 2, 45, "down", true },
  { "nec/circuit-drop", "tern", "circuit:inverter-run", "is lost", "    length: 8 ft", "    length: %s ft", 1, 200, "down" },
  { "nec/busbar", "quill", "busbar:main/bus", "Protecting device plus", "        protecting_device: 150 A", "        protecting_device: %s A", 50, 190, "down", true },
  { "nec/busbar", "quill", "busbar:main/bus", "Protecting device plus", "rating: 225 A\n        protecting", "rating: %s A\n        protecting", 100, 400, "up", true },
  { "nec/inverter-breaker", "quill", "inverter:inverter-1", "125 % of the marked", "duty: source, rating: 40 A", "duty: source, rating: %s A", 10, 100, "up", true },
  { "nec/inverter-breaker", "quill", "inverter:inverter-1", "the maker allows", "duty: source, rating: 40 A", "duty: source, rating: %s A", 10, 100, "down", true },
  { "nec/panel-fault-current", "quill", "panel:main", "of the panel", "available_fault_current: 9.2 kA", "available_fault_current: %s kA", 1, 60, "down" },
  { "nec/rapid-shutdown", "quill", "rapid_shutdown:rapid_shutdown", "Voltage inside", "voltage_inside: 19 V", "voltage_inside: %s V", 0, 200, "down" },
  { "nec/service-load", "quill", "service:service", "Load of the dwelling", "appliances: 14 kVA", "appliances: %s kVA", 0, 60, "down" },
  { "nec/supply-side", "tern", "interconnection:interconnection", "Overcurrent device against 125 %", "  ocpd_rating: 35 A\n  ocpd_distance", "  ocpd_rating: %s A\n  ocpd_distance", 15, 70, "up", true },
  { "nec/panel-working-space", "tern", "panel:main", "Depth", "{depth: 4 ft, width: 36 in, height: 8 ft, equipment_width: 15 in", "{depth: %s ft, width: 36 in, height: 8 ft, equipment_width: 15 in", 1, 10, "up" },
  { "nec/disconnect-working-space", "quill", "disconnect:pv-disconnect", "Depth", "[UL 98], working_space: {depth: 4 ft", "[UL 98], working_space: {depth: %s ft", 1, 10, "up" },
  { "nec/disconnect-rating", "quill", "disconnect:pv-disconnect", "Voltage rating", "rating: 60 A, voltage_rating: 240 V", "rating: 60 A, voltage_rating: %s V", 60, 600, "up" },
  { "nec/service-sources", "quill", "service:service", "Rated currents", "  conductor_ampacity: 175 A", "  conductor_ampacity: %s A", 15, 400, "up" },
  { "nec/conductor-count", "quill", "circuit:inverter-run", "of this circuit alone", "    current_carrying_conductors: 2", "    current_carrying_conductors: %s", 1, 40, "up", true },
  -- From three conductors on: two are the tightest, which is an exception of its own (unit test of the limits).
  { "nec/raceway-fill", "quill", "circuit:inverter-run", "is filled", "    conductors: 4\n    current_carrying_conductors: 2", "    conductors: %s\n    current_carrying_conductors: 2", 3, 40, "down", true },
  { "nec/raceway-support", "tern", "circuit:inverter-run", "between supports", "length: 8 ft\n    ambient_temperature: 33 °C\n    on_roof: no\n    inside_building: no\n    support_spacing: 36 in", "length: 8 ft\n    ambient_temperature: 33 °C\n    on_roof: no\n    inside_building: no\n    support_spacing: %s in", 1, 300, "down" },
  { "nec/circuit-protection", "quill", "circuit:inverter-run", "125 % of the current", "    ocpd_rating: 40 A", "    ocpd_rating: %s A", 10, 100, "up", true },
  { "nec/circuit-protection", "quill", "circuit:inverter-run", "largest that protects", "    ocpd_rating: 40 A", "    ocpd_rating: %s A", 10, 100, "down", true },
  { "nec/panel-spaces", "quill", "panel:main", "new breakers take", "    free_spaces: 14", "    free_spaces: %s", 1, 40, "up", true },
  { "nec/service-disconnect", "quill", "service:service", "service disconnect", "  disconnect_rating: 150 A", "  disconnect_rating: %s A", 15, 400, "up" },
  { "nec/disconnect-fault-current", "quill", "disconnect:service-disconnect", "Interrupting", "available_fault_current: 9.2 kA", "available_fault_current: %s kA", 1, 60, "down" },
  { "nec/inverter-working-space", "quill", "inverter:inverter-1", "Depth", "{depth: 4 ft, width: 36 in, height: 8 ft, equipment_width: 14 in", "{depth: %s ft, width: 36 in, height: 8 ft, equipment_width: 14 in", 1, 10, "up" },
  { "nec/rapid-shutdown", "quill", "rapid_shutdown:rapid_shutdown", "outside the array", "  boundary: 1 ft", "  boundary: %s ft", 0, 20, "down" },
  { "nec/rapid-shutdown", "quill", "rapid_shutdown:rapid_shutdown", "inside the building", "  length_inside_building: 0 ft", "  length_inside_building: %s ft", 0, 20, "down" },
  { "nec/rapid-shutdown", "quill", "rapid_shutdown:rapid_shutdown", "outside the boundary", "  voltage_outside: 30 V", "  voltage_outside: %s V", 0, 200, "down" },
  { "nec/rapid-shutdown", "quill", "rapid_shutdown:rapid_shutdown", "Time", "  time: 20 s", "  time: %s s", 0, 120, "down" },
  { "nec/shutdown-initiator", "quill", "rapid_shutdown:rapid_shutdown", "at the most", "  initiators: 1", "  initiators: %s", 1, 20, "down", true },
  { "nec/label-rapid-shutdown", "quill", "design:Quill Hollow", "Height of its title", "RAPID SHUTDOWN, letter_height: 3/8 in", "RAPID SHUTDOWN, letter_height: %s in", 0.1, 3, "up" },
  { "nec/label-dc-raceway", "quill", "design:Quill Hollow", "one to the next", "permanent: yes, spacing: 10 ft", "permanent: yes, spacing: %s ft", 1, 60, "down" },
  { "nec/disconnect-rating", "quill", "disconnect:pv-disconnect", "125 % of the output", "role: utility, of: inverter-1, rating: 60 A", "role: utility, of: inverter-1, rating: %s A", 10, 200, "up", true },
}

local function margin(row, value)
  local number = row[10] and ("%d"):format(value) or ("%.4f"):format(value)
  local report = electrical.report { rule = row[1], design = row[2], change = { { row[5], (row[6]:gsub("%%s", number)) } } }
  return plumb.test(plumb.find(report, row[1], row[3]), row[4]).margin
end

TestMonotony = {}
math.randomseed(20260803) -- the same numbers each time

local function try(row)
  for _ = 1, 6 do
    local a, b = row[7] + math.random() * (row[8] - row[7]), row[7] + math.random() * (row[8] - row[7])
    if row[10] then a, b = math.floor(a), math.floor(b) end
    if a > b then a, b = b, a end
    local at_a, at_b = margin(row, a), margin(row, b)
    local rises = row[9] == "up"
    local holds = rises and at_a <= at_b + 1e-9 or not rises and at_a >= at_b - 1e-9
    lu.assertTrue(holds, ("%s: %g gives %g, %g gives %g"):format(row[1], a, at_a, b, at_b))
  end
end

for i, row in ipairs(rows) do
  TestMonotony[("test_%02d_%s_%s"):format(i, row[1]:gsub("%W", "_"), row[9])] = function() try(row) end
end

-- Exceptions: more is not always worse, and not always better.
local function kind(row) return plumb.find(electrical.report(row), row.rule, row.about).kind end

function TestMonotony.test_a_converter_string_has_a_least_and_a_most()
  local function at(columns)
    return kind { rule = "nec/converter-string", design = "quill", about = "string:string-1", change = { { "columns: 10, rows: 1", "columns: " .. columns .. ", rows: 1" } } }
  end
  lu.assertEquals({ at(7), at(8), at(12) }, { "fail", "pass", "pass" })
  -- 13 x 440 W are over the 5 700 W of a string.
  lu.assertEquals(kind { rule = "nec/converter-string", design = "quill", about = "string:string-1", change = { { "modules: [low]", "modules: [low, high]" } } }, "fail")
end

function TestMonotony.test_a_warmer_low_helps_the_cold_limit_and_a_warmer_high_hurts_the_window()
  local function at(change, rule) return kind { rule = rule, design = "tern", about = "string:string-1", change = { change } } end
  lu.assertEquals(at({ "modules: [low]", "modules: [low, high]" }, "nec/string-voltage"), "fail")
  lu.assertEquals(at({ "columns: 10, rows: 1", "columns: 3, rows: 1" }, "nec/string-window"), "fail") -- too short is wrong, too
end

function TestMonotony.test_a_larger_conductor_can_overfill_its_raceway()
  local function at(size)
    local change = { { "    conductor_size: 8 AWG", "    conductor_size: " .. size } }
    return kind { rule = "nec/circuit-terminals", design = "tern", about = "circuit:inverter-run", change = change },
      kind { rule = "nec/raceway-fill", design = "tern", about = "circuit:inverter-run", change = change }
  end
  lu.assertEquals({ at("12 AWG") }, { "fail", "pass" })
  lu.assertEquals({ at("8 AWG") }, { "pass", "pass" })
  lu.assertEquals({ at("2 AWG") }, { "pass", "fail" })
end

function TestMonotony.test_insulation_above_the_terminals_brings_nothing_there()
  local row = { rule = "nec/circuit-terminals", design = "tern", about = "circuit:inverter-run" }
  local usual = plumb.test(plumb.find(electrical.report(row), row.rule, row.about), "column of the terminals").actual.value
  row.change = { { "    insulation_temperature: 90 °C\n    conductors: 4\n    current_carrying_conductors: 2\n    neutral_size: 8 AWG", "    insulation_temperature: 75 °C\n    conductors: 4\n    current_carrying_conductors: 2\n    neutral_size: 8 AWG" } }
  lu.assertEquals(plumb.test(plumb.find(electrical.report(row), row.rule, row.about), "column of the terminals").actual.value, usual)
end

-- A temperature exactly on a row of the table, and between two rows: the hotter row counts.
function TestMonotony.test_temperatures_on_and_between_rows()
  local function at(degrees)
    local report = electrical.report { rule = "nec/circuit-ampacity", design = "tern", change = { { "length: 8 ft\n    ambient_temperature: 33 °C", "length: 8 ft\n    ambient_temperature: " .. degrees .. " °C" } } }
    return plumb.test(plumb.find(report, "nec/circuit-ampacity", "circuit:inverter-run"), "after corrections").actual.value
  end
  lu.assertAlmostEquals(at("40"), 55 * 0.91, 1e-9)
  lu.assertAlmostEquals(at("40.5"), 55 * 0.87, 1e-9)
  lu.assertAlmostEquals(at("41"), 55 * 0.87, 1e-9)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

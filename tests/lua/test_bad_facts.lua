-- Facts that cannot be what they are written as: each kind of fact, with what it says to the wrong kind of text.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestBadFacts = {}

-- Replaces a line of a house of its own; the problem's code, and words of its message.
local function refused(line, code, words)
  local path = plumb.folder() .. "/fact.yaml"
  plumb.write(path, "title: House\nproject: {permit_application_date: 2026-08-03}\n" .. line .. "\n")
  local output, exit = plumb.run({ "check", path, "--format", "json", "--book", "marrow-bay" })
  local report = cjson.decode(output)
  lu.assertEquals({ exit, #report.problems, #report.findings }, { 3, 1, 0 }, line)
  lu.assertEquals(report.problems[1].code, code, line)
  lu.assertStrContains(report.problems[1].message, words)
  lu.assertTrue(report.problems[1].place.line >= 3, line)
  return report.problems[1].message, report.problems[1].example
end

local function plane(facts) return "roof:\n  planes:\n    - {name: south, " .. facts .. "}" end

function TestBadFacts:test_points_and_outlines()
  local function stack(facts) return plane("obstructions: [{name: stack, " .. facts .. "}]") end
  refused(stack("at: 3 ft"), "node-type", "is needed here")
  refused(stack("at: [3 ft]"), "point", "a point is two lengths, along the eave and up the slope; here are 1")
  refused(stack("at: [1 ft, 2 ft, 3 ft]"), "point", "here are 3")
  refused(stack("at: [1 ft, [2 ft]]"), "node-type", "is needed here")
  refused(stack("at: [1 ft, 2 A]"), "unit-wrong", "2 A")
  refused(plane("outline: 3 ft"), "node-type", "is needed here")
  refused(plane("outline: [[0 ft, 0 ft], [1 ft, 1 ft]]"), "points", "an outline has at least three corners; here are 2")
  refused(plane("outline: [[0 ft, 0 ft], [1 ft, 1 ft], 3 ft]"), "node-type", "is needed here")
end

-- What nobody knows is left blank: said where a word stands in place of a number.
function TestBadFacts:test_a_word_for_a_number()
  local words = "(leave it blank while nobody knows)"
  refused("building: {mean_roof_height: TBD}", "number-bad", words)
  refused("building: {stories: unknown}", "count", words)
  refused("site: {topographic_factor: unknown}", "number-bad", words)
  lu.assertNotStrContains(refused("building: {mean_roof_height: 15 fet}", "unit-unknown", "did you mean"), words)
end

function TestBadFacts:test_names()
  for _, name in ipairs({ '"a/b"', '"a|b"', '"a\\nb"', '"a\\tb"', ("x"):rep(81) }) do
    refused("roof: {planes: [{name: " .. name .. "}]}", "name", "a name is on one line")
  end
end

function TestBadFacts:test_words_and_lists_of_words()
  refused(plane("covering: [tile]"), "node-type", "is needed here")
  refused(plane("covering: tiel"), "word", "there is no covering 'tiel'; there is: composition shingle")
  lu.assertNotStrContains(refused(plane("covering: asphalt shingle"), "word", "there is: composition shingle, "), "did you mean")
  refused("service: {voltage: 120/240 V}", "range", "voltage is 0.5 V, since / makes a fraction; believable values run from")
  lu.assertNotStrContains(refused("service: {voltage: 2400 V}", "range", "believable"), "fraction")
  refused(plane("covering: shake"), "word", "metal shingle, corrugated metal, wood shake, wood shingle, rolled roofing, membrane, built-up; did you mean 'wood shake'?")
  refused(plane("covering: {is: slate, from: sheet}"), "word", "there is no source of a fact 'sheet'; there is: measured, data sheet, drawing, assumed; did you mean 'data sheet'?")
  local function circuit(facts) return "circuits: [{name: home run, " .. facts .. "}]" end
  refused(circuit("role: branch"), "word", "there is no role 'branch'; there is: PV source, PV output, converter output, inverter output, microinverter branch, combined branches, feeder, feeder tap, supply-side, service; did you mean 'microinverter branch'?")
  lu.assertNotStrContains(refused(circuit("role: PV"), "word", "supply-side, service"), "did you mean")
  lu.assertNotStrContains(refused(circuit("conductor_material: cu"), "word", "there is no conductor_material 'cu'; there is: copper, aluminum"), "did you mean")
  refused(plane("edges: eave"), "node-type", "is needed here")
  refused(plane("edges: [eave, rake, rigde, rake]"), "word", "did you mean 'ridge'")
  refused(plane("edges: [eave, [rake], ridge, rake]"), "node-type", "is needed here")
end

-- Whatever a long word is cut at, what is told of it stays text.
function TestBadFacts:test_long_words_are_cut_between_letters()
  for length = 74, 84 do
    local path = plumb.folder() .. "/long.yaml"
    plumb.write(path, "title: House\nproject: {permit_application_date: 2026-08-03}\n" .. plane("covering: " .. ("x"):rep(length) .. "élan" .. ("€"):rep(9)) .. "\n")
    local output, exit = plumb.run({ "check", path, "--book", "marrow-bay", "--format", "json" })
    lu.assertEquals(exit, 3)
    local message = cjson.decode(output).problems[1].message
    lu.assertStrContains(message, "there is no covering 'xxx")
    lu.assertEquals(plumb.count(message, "\u{FFFD}"), 0, message)
    lu.assertNotNil(utf8.len(message))
  end
end

function TestBadFacts:test_a_slope_as_roofers_say_it()
  local path = plumb.folder() .. "/slope.yaml"
  local function written(slope)
    plumb.write(path, "title: House\nproject: {permit_application_date: 2026-08-03}\n" .. plane("slope: " .. slope) .. "\n")
    local output, exit = plumb.run({ "check", path, "--book", "marrow-bay", "--format", "json", "--with-working" })
    return output:gsub(slope, "S"), exit
  end
  local one, exit = written("5/12")
  lu.assertEquals(exit, 2)
  lu.assertEquals({ written("5 in 12") }, { one, exit })
  refused(plane("slope: 5 in"), "unit-wrong", "or a slope as 4/12, 4:12 or 4 in 12")
  refused(plane("slope: 5"), "unit-missing", "or a slope as 4/12, 4:12 or 4 in 12")
end

function TestBadFacts:test_counts_and_numbers()
  refused(plane("layers: 1.5"), "count", "a whole number is needed, not '1.5'")
  refused(plane("layers: many"), "count", "a whole number is needed, not 'many'")
  refused(plane("layers: 77"), "range", "")
  refused(plane("layers: 5 ft"), "count", "a whole number")
  refused("jobsite: {ladder_base_ratio: wide}", "number-bad", "wide")
  refused("jobsite: {ladder_base_ratio: 900}", "range", "")
end

function TestBadFacts:test_yes_no_and_days()
  refused(plane("snow_guards: perhaps"), "yes-or-no", "perhaps")
  for word, meant in pairs { No = "no", N = "no", FALSE = "no", ["0"] = "no", Yes = "yes", none = "yes" } do
    local _, example = refused(plane("snow_guards: " .. word), "yes-or-no", word)
    lu.assertEquals(example, "snow_guards: " .. meant, word)
  end
  refused("papers: [{name: plan, date: 2026-02-30}]", "date", "2026-02-30")
end

function TestBadFacts:test_where_a_fact_comes_from()
  refused(plane("age: {is: 8 year, from: hearsay}"), "word", "source of a fact")
  refused(plane("age: {is: 8 year, form: measured}"), "unknown-key", "did you mean 'from'")
  refused(plane("age: {from: measured}"), "value-missing", "needs the value under 'is'")
  refused(plane("age: {is: 8 year, from: [measured]}"), "node-type", "is needed here")
end

-- The other side of a relation is worked out, not written.
function TestBadFacts:test_what_is_worked_out()
  refused("inverters: [{name: one, breakers: [main]}]", "derived", "breakers of inverter is worked out from the other side, from what each breaker says under 'serves'")
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

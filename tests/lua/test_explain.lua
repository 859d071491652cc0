-- The whole working of one finding: facts, numbers of the law with their history, steps, comparisons.
local lu = require("luaunit")
local plumb = require("plumb")

TestExplain = {}

local sample = plumb.top .. "/samples/quill-hollow/failing.yaml"

local function explain(...)
  local output, code, errors = plumb.run({ "explain", ... })
  return output, code, errors, (output:gsub("%s+", " "))
end

function TestExplain:test_a_comparison_with_all_it_rests_on()
  local output, code, errors, flat = explain(sample, "--rule", "irc/ridge-clearance", "--about", "roof_plane south", "--book", "marrow-bay")
  lu.assertEquals({ code, errors }, { 0, "" })
  lu.assertStrContains(output, "irc/ridge-clearance, roof_plane south\nClear width at the ridge\n")
  -- the rule: citation, edition, who adopted it
  lu.assertStrContains(flat, "R324.6.2, irc 2021,")
  lu.assertStrContains(flat, "2023-01-01 marrow-bay adopts it, Ordinance 2022-17 (")
  -- a fact with its place
  lu.assertStrContains(flat, "roof_plane south: slope = 5/12 (" .. sample .. ":53)")
  lu.assertStrContains(flat, "module low-1-1: orientation = portrait, and so of 9 more")
  -- a number of the law: what the code says, who amended it, from when, by which ordinance, where it stands
  lu.assertStrContains(flat, "ridge_setback_small = 36 in: clear width at a ridge")
  lu.assertStrContains(flat, "irc 2021 adds it: 18 in, R324.6.2 (")
  lu.assertStrContains(flat, "2025-05-01 marrow-bay amends it: 36 in, Ordinance 2025-9 (")
  lu.assertStrContains(flat, "rules/towns/marrow-bay/book.yaml:24)")
  -- steps and comparison
  lu.assertStrContains(flat, "module high-1-1 is the nearest to ridge")
  lu.assertStrContains(flat, "does not hold: Clear width below the ridge is 17.5 in; at least 36 in is needed (51 % short).")
  lu.assertStrContains(flat, "to do: Lower or drop the top row of modules.")
end

function TestExplain:test_every_way_and_the_source_of_each_step()
  local output, code, _, flat = explain(sample, "--rule", "nec/busbar", "--about", "busbar:main/bus", "--book", "marrow-bay")
  lu.assertEquals(code, 0)
  lu.assertStrContains(flat, "one of 7 ways is enough: does not hold")
  for number = 1, 7 do lu.assertStrContains(flat, "way " .. number .. ", \"") end
  lu.assertStrContains(flat, "inverter inverter-1: marked output 32 A NEC 690.8(A)")
  lu.assertStrContains(flat, "holds: The source breaker is at the end opposite the feed.")
  lu.assertStrContains(flat, "open: busbar main/bus: power_control_limit is not given.")
  lu.assertStrContains(flat, "busbar main/bus: power_control_limit = not given")
  for line in output:gmatch("[^\n]+") do
    -- 80 columns, unless one word (a path) is longer by itself
    local columns = utf8.len(line)
    lu.assertTrue(columns <= 80 or not line:match("^%s*%S+%s+%S"), line)
  end
end

function TestExplain:test_all_things_of_a_rule_where_none_is_named()
  local output = explain(sample, "--rule", "irc/ridge-clearance", "--book", "marrow-bay")
  lu.assertStrContains(output, "irc/ridge-clearance, roof_plane south\n")
  lu.assertStrContains(output, "irc/ridge-clearance, roof_plane north\n")
  lu.assertStrContains(output, "Does not apply here.")
end

function TestExplain:test_words_that_are_not_there()
  local output, code, errors = explain(sample, "--rule", "irc/ridgeclearance", "--book", "marrow-bay")
  lu.assertEquals({ output, code }, { "", 64 })
  lu.assertStrContains(errors, "did you mean 'irc/ridge-clearance'?")
  _, code, errors = explain(sample, "--rule", "ridge-clearance", "--book", "marrow-bay")
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "a rule is named with its book: did you mean 'irc/ridge-clearance'?")
  _, code, errors = explain(sample, "--rule", "irc/ridge-clearance", "--about", "roof_plane soth", "--book", "marrow-bay")
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "did you mean 'roof_plane south'?")
  _, code, errors = explain(sample, "--rule", "irc/ridge-clearance", "--about", "chimney", "--book", "marrow-bay")
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "there is roof_plane south, roof_plane north")
  _, code, errors = explain(sample, "--book", "marrow-bay")
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "not said which rule")
  _, code = explain(sample, "--rule", "irc/ridge-clearance")
  lu.assertEquals(code, 64)
  _, code = explain(sample, sample, "--rule", "irc/ridge-clearance", "--book", "marrow-bay")
  lu.assertEquals(code, 64)
  _, code = explain(sample, "--rule", "irc/ridge-clearance", "--book", "marrow-bay", "--on", "yesterday")
  lu.assertEquals(code, 64)
end

function TestExplain:test_what_cannot_be_read_is_told()
  local _, code, errors = explain(plumb.folder() .. "/nowhere.yaml", "--rule", "irc/ridge-clearance", "--book", "marrow-bay")
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "nowhere.yaml")
  _, code, errors = explain(sample, "--rule", "irc/ridge-clearance", "--book", "marow-bay")
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "marrow-bay")
end

-- A town that deletes, restores and replaces.
local function town(changes)
  local folder = plumb.folder() .. "/town"
  os.execute(("rm -rf '%s' && mkdir -p '%s'"):format(folder, folder))
  plumb.write(folder .. "/book.yaml", [[
book: town
title: Town
maintained_by: Building Department
role: authority
scope: dwellings
adopts:
  - {book: irc, edition: 2021, from: 2023-01-01, cite: Ordinance 1}
]] .. changes)
  return folder
end

function TestExplain:test_who_deleted_it()
  local book = town([[
deletes:
  - {rule: irc/ridge-clearance, edition: 2021, from: 2024-02-03, cite: Ordinance 7}
]])
  local _, code, _, flat = explain(sample, "--rule", "irc/ridge-clearance", "--book", book)
  lu.assertEquals(code, 0)
  lu.assertStrContains(flat, "2023-01-01 town adopts it, Ordinance 1 (")
  lu.assertStrContains(flat, "2024-02-03 town deletes it, Ordinance 7 (")
  lu.assertStrContains(flat, "The rule does not hold on that day")
  -- The day before it still held.
  _, _, _, flat = explain(sample, "--rule", "irc/ridge-clearance", "--about", "south", "--book", book, "--on", "2024-02-02")
  lu.assertNotStrContains(flat, "deletes it")
  lu.assertStrContains(flat, "2024-02-02")
  lu.assertStrContains(flat, "Clear width below the ridge is 17.5 in")
end

function TestExplain:test_whose_text_it_is()
  local book = town([[
replaces:
  - {rule: irc/ridge-clearance, edition: 2021, with: ridge.lua, from: 2024-01-01, cite: Ordinance 8}
]])
  plumb.write(book .. "/ridge.lua", [[
return {
  title = "Clear width at the ridge, as the town has it",
  cite = "Ordinance 8",
  about = "roof_plane",
  applies = function() return true end,
  check = function() review("Ask the marshal") end,
}
]])
  local _, code, errors, flat = explain(sample, "--rule", "irc/ridge-clearance", "--about", "south", "--book", book)
  lu.assertEquals(code, 0, errors)
  lu.assertStrContains(flat, "2024-01-01 town replaces it, Ordinance 8 (")
  lu.assertStrContains(flat, "so the text is that of town")
  lu.assertStrContains(flat, "For a person: Ask the marshal.")
end

-- A rule of every kind of answer: advice, a person's, a missing fact, ways of each kind, a fact that is assumed.
function TestExplain:test_each_kind_of_answer()
  local book = town("")
  local function rule(name, about, check, remedy)
    plumb.write(("%s/%s.lua"):format(book, name), ([[
return {
  title = "Rule %s",
  cite = "T.1",
  about = "%s",
  applies = function() return true end,
  check = function(it) %s end,
  remedy = "%s",
}
]]):format(name, about, check, remedy or "Do it."))
  end
  rule("advice", "roof_plane", 'should.not_exceed("Age of the covering", it.age, 1 * year)', "Cover it anew.")
  rule("ways", "roof_plane", [[shall.meet_one_of {
    { "old", function() shall.not_exceed("Layers", it.layers, 0) end },
    { "new", function() shall.be("It is guarded", it.snow_guards) end },
    { "seen", function() review("Look at it") end },
    { "told", function() shall.not_exceed("Parapet", it.eave_overhang, 90 * inch) end },
  }]])
  rule("person", "roof_plane", 'shall.not_exceed("Layers", it.layers, 2) review("Look at the flashing")')
  rule("fewer", "circuit", 'shall.not_exceed("Sets", it.parallel_sets, 1)')
  rule("number", "roof_plane", 'shall.not_exceed("Layers", 1, 2)')
  local text = plumb.change(plumb.sample("failing"), "      eave_overhang: 16 in\n", "", 2)
  local path = plumb.folder() .. "/answers.yaml"
  plumb.write(path, text)
  local catalogues = plumb.top .. "/samples/catalogue"
  local function told(name, about)
    local _, code, errors, flat = explain(path, "--rule", "town/" .. name, "--about", about, "--book", book, "--catalogues", catalogues)
    lu.assertEquals({ code, errors }, { 0, "" })
    return flat
  end
  local flat = told("advice", "south")
  lu.assertStrContains(flat, "falls short of advice: Age of the covering is 8 year")
  lu.assertStrContains(flat, "Falls short of advice: ")
  lu.assertStrContains(flat, "to do: Cover it anew.")
  lu.assertStrContains(flat, "T.1, town, ")
  flat = told("ways", "roof_plane south")
  lu.assertStrContains(flat, "one of 4 ways is enough: open")
  for _, way in ipairs { '1, "old": not met', '2, "new": not met', '3, "seen": for a person', '4, "told": open' } do
    lu.assertStrContains(flat, "way " .. way)
  end
  lu.assertStrContains(flat, "Open: ")
  lu.assertNotStrContains(flat, "to do:")
  flat = told("person", "roof_plane:south")
  lu.assertStrContains(flat, "holds: Layers: 1; at most 2 is allowed")
  lu.assertStrContains(flat, "for a person: Look at the flashing")
  lu.assertStrContains(flat, "For a person: ")
  flat = told("fewer", "inverter-run")
  lu.assertStrContains(flat, "circuit inverter-run: parallel_sets = 1, assumed: one conductor per pole")
  lu.assertStrContains(flat, "Stands: ")
  flat = told("number", "south")
  lu.assertNotStrContains(flat, "Facts of the design") -- it read none
end

function TestExplain:test_who_lifted_it()
  local book = town([[
waivers:
  - {rule: town/layers, about: "roof_plane:south", reason: seen on site, granted_by: Chief Official, permit: B-2026-0412, from: 2026-01-01, until: 2027-01-01}
]])
  plumb.write(book .. "/layers.lua", [[
return {
  title = "Layers",
  cite = "T.1",
  about = "roof_plane",
  applies = function() return true end,
  check = function(plane) shall.not_exceed("Layers", plane.layers, 0) end,
}
]])
  plumb.write(book .. "/look.lua", [[
return {
  title = "Flashing",
  cite = "T.2",
  about = "roof_plane",
  applies = function() return true end,
  check = function() review("Look at the flashing") end,
}
]])
  local path = plumb.folder() .. "/lifted.yaml"
  plumb.write(path, plumb.sample("failing"))
  local pipe = assert(io.popen("sha256sum < '" .. path .. "'"))
  local digest = pipe:read("a"):match("^%x+")
  pipe:close()
  local function sign(equipment)
    plumb.write(plumb.folder() .. "/lifted.signoff.yaml", ([[
- {rule: town/look, about: "roof_plane:south", verdict: accepted, by: Ada Thornbury, license: PE 20418, why: seen from the ladder, on: 2026-08-10, digest: %s%s}
]]):format(digest, equipment))
  end
  sign("")
  local catalogues = plumb.top .. "/samples/catalogue"
  local _, code, errors, flat = explain(path, "--rule", "town/look", "--about", "south", "--book", book, "--on", "2026-08-10", "--catalogues", catalogues)
  lu.assertEquals(code, 0)
  lu.assertNotStrContains(flat, "signed: ")
  sign(", " .. errors:match("equipment: %x+"))
  _, code, errors, flat = explain(path, "--rule", "town/layers", "--about", "south", "--book", book, "--on", "2026-08-10", "--catalogues", catalogues)
  lu.assertEquals({ code, errors }, { 0, "" })
  lu.assertStrContains(flat, "Fails, waived: ")
  lu.assertStrContains(flat, "waived by Chief Official: seen on site")
  _, code, errors, flat = explain(path, "--rule", "town/look", "--about", "south", "--book", book, "--on", "2026-08-10", "--catalogues", catalogues)
  lu.assertEquals({ code, errors }, { 0, "" })
  lu.assertStrContains(flat, "For a person, and signed: ")
  lu.assertStrContains(flat, "accepted by Ada Thornbury, license PE 20418, on 2026-08-10: seen from the ladder")
end

-- A card that could not be read cites nothing: its book stands alone.
function TestExplain:test_a_rule_without_a_card()
  local book = town("")
  plumb.write(book .. "/odd.lua", "return {")
  local output, code = explain(sample, "--rule", "town/odd", "--book", book, "--on", "2026-08-03")
  lu.assertEquals(code, 4)
  lu.assertStrContains(output, "1  The rule\n  - town, ")
end

-- What no rule covers is a finding of the program itself.
function TestExplain:test_what_no_book_has_a_rule_for()
  local path = plumb.folder() .. "/battery.yaml"
  plumb.write(path, plumb.change(plumb.sample("failing"), "other_sources: none", "other_sources: [{name: tank, kind: storage}]"))
  local _, code, errors, flat = explain(path, "--rule", "plumbrule/scope", "--book", town(""), "--catalogues", plumb.top .. "/samples/catalogue")
  lu.assertEquals({ code, errors }, { 0, "" })
  lu.assertStrContains(flat, "plumbrule/scope, ")
  lu.assertStrContains(flat, "source tank")
  _, code, errors = explain(path, "--rule", "plumbrule/scop", "--book", town(""), "--catalogues", plumb.top .. "/samples/catalogue")
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "did you mean 'plumbrule/scope'?")
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

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

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

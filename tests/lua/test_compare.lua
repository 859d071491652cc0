-- What a change of books does: to the books, and to designs, paired by rule and thing.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestCompare = {}

local samples = plumb.top .. "/samples/quill-hollow/"
local folder

function TestCompare:setUp()
  folder = plumb.folder() .. "/compare"
  os.execute(("rm -rf '%s' && mkdir -p '%s'"):format(folder, folder))
end

local function book(name, rest, role)
  os.execute(("mkdir -p '%s/%s'"):format(folder, name))
  plumb.write(("%s/%s/book.yaml"):format(folder, name), ([[
book: %s
title: A book
maintained_by: somebody
role: %s
scope: dwellings
]]):format(name, role or "authority") .. rest)
end

local function compare(...)
  local words = { "compare", "--books", folder, "--format", "json", ... }
  local output, code, errors = plumb.run(words)
  return output ~= "" and cjson.decode(output), code, errors
end

local function text(...)
  local output, code, errors = plumb.run({ "compare", "--books", folder, ... })
  return (output:gsub("%s+", " ")), code, errors
end

local function pick(list, key, value)
  local found
  for _, one in ipairs(list) do
    if one[key] == value then
      lu.assertNil(found, value .. " stands twice")
      found = one
    end
  end
  return found
end

local adopts = "adopts:\n  - {book: irc, edition: 2021, from: 2023-01-01, cite: Ordinance 1}\n"
local function ridge(width, from)
  return adopts .. ("values:\n  ridge_setback_small: [{from: %s, edition: 2021, is: %s, cite: Ordinance 2}]\n"):format(from or "2024-01-01", width)
end

function TestCompare:test_a_stricter_number_fails_a_design_that_stood()
  book("town", adopts)
  book("stricter", ridge("9 ft"))
  local result, code = compare("town", "stricter", samples .. "standing.yaml")
  lu.assertEquals(code, 1)
  local value = pick(result.changes.values, "value", "ridge_setback_small")
  lu.assertEquals({ value.was, value.is, value.tightening, value.cited_only }, { "18 in", "9 ft", "stricter", false })
  lu.assertEquals({ value.was_by, value.is_by }, { "irc 2021, R324.6.2", "stricter from 2024-01-01, Ordinance 2" })
  lu.assertStrContains(value.is_place.file, "stricter/book.yaml")
  lu.assertEquals(#result.changes.values, 1)
  local design = result.designs[1]
  local finding = pick(design.findings, "rule", "irc/ridge-clearance")
  lu.assertEquals({ finding.was, finding.is, finding.about }, { "pass", "fail", "roof_plane south" })
  lu.assertStrContains(finding.is_message, "at least 108 in is needed")
  lu.assertStrContains(finding.was_message, "at least 18 in is needed")
  lu.assertEquals({ result.counts.newly_fail, result.counts.no_longer_fail }, { 1, 0 })
  -- and back again
  result, code = compare("stricter", "town", samples .. "standing.yaml")
  lu.assertEquals(code, 0)
  lu.assertEquals({ result.counts.newly_fail, result.counts.no_longer_fail }, { 0, 1 })
  lu.assertEquals(pick(result.changes.values, "value", "ridge_setback_small").tightening, "looser")
  local flat = text("town", "stricter", samples .. "standing.yaml")
  lu.assertStrContains(flat, "ridge_setback_small: 18 in -> 9 ft, stricter was: irc 2021, R324.6.2")
  lu.assertStrContains(flat, "stands -> fails: irc/ridge-clearance, roof_plane south")
end

function TestCompare:test_the_same_stack_is_the_same()
  local result, code = compare("marrow-bay", "marrow-bay", samples .. "standing.yaml", samples .. "failing.yaml")
  lu.assertEquals(code, 0)
  lu.assertEquals({ #result.changes.books, #result.changes.rules, #result.changes.values }, { 0, 0, 0 })
  for key, count in pairs(result.counts) do
    if key ~= "paired" then lu.assertEquals(count, 0, key) end
  end
  lu.assertTrue(result.counts.paired > 100)
  lu.assertStrContains((text("marrow-bay", "marrow-bay", samples .. "standing.yaml")), "The books say the same.")
end

function TestCompare:test_two_days_of_one_stack()
  local result, code = compare("--book", "marrow-bay", "--on", "2026-08-03", "--against", "2024-01-01", samples .. "failing.yaml")
  lu.assertEquals(code, 0) -- it fails on both days, by more than before
  lu.assertTrue(result.counts.other_numbers > 0)
  lu.assertEquals({ result.was.on, result.is.on }, { "2024-01-01", "2026-08-03" })
  local nec = pick(result.changes.books, "book", "nec")
  lu.assertEquals({ nec.change, nec.was, nec.is }, { "edition", "2020", "2023" })
  local busbar = pick(result.changes.rules, "rule", "nec/busbar")
  lu.assertEquals({ busbar.change, busbar.was_cite, busbar.is_cite }, { "cited anew", "705.12(B)(3)", "705.12(B)" })
  local cited = pick(result.changes.values, "value", "busbar_share")
  lu.assertEquals({ cited.cited_only, cited.was, cited.is }, { true, "1.2", "1.2" })
  -- A new edition that says the same with the same citation is no change of the value.
  lu.assertNil(pick(result.changes.values, "value", "dwelling_dc_voltage"))
end

local rule = [[
return {
  title = "TITLE",
  cite = "A.1",
  about = "roof_plane",
  applies = function() return true end,
  check = function(plane) CHECK end,
}
]]
local function write_rule(name, title, check)
  plumb.write(folder .. "/" .. name .. ".lua", (rule:gsub("TITLE", title):gsub("CHECK", (check:gsub("%%", "%%%%")))))
end

function TestCompare:test_rules_added_gone_deleted_restored_and_rewritten()
  book("old", adopts .. [[
deletes:
  - {rule: irc/roof-layers, edition: 2021, from: 2024-01-01, cite: Ordinance 3}
]])
  book("new", adopts .. [[
deletes:
  - {rule: irc/flashing, edition: 2021, from: 2024-01-01, cite: Ordinance 4}
replaces:
  - {rule: irc/ridge-clearance, edition: 2021, with: ridge.lua, from: 2024-01-01, cite: Ordinance 5}
]])
  write_rule("old/mine", "Mine", 'shall.be("It is there", true)')
  write_rule("new/other", "Other", 'shall.not_exceed("Layers", plane.layers, 0)')
  write_rule("new/ridge", "Ridge", 'review("Ask")')
  local result, code = compare("old", "new", samples .. "standing.yaml")
  lu.assertEquals(code, 1)
  local function change(id)
    local one = pick(result.changes.rules, "rule", id)
    return one and one.change
  end
  lu.assertEquals(change("new/other"), "added")
  lu.assertEquals(change("old/mine"), "gone")
  lu.assertEquals(change("irc/flashing"), "deleted")
  lu.assertEquals(change("irc/roof-layers"), "restored")
  lu.assertEquals(change("irc/ridge-clearance"), "rewritten")
  lu.assertStrContains(pick(result.changes.rules, "rule", "irc/flashing").by, "new deletes it from 2024-01-01, Ordinance 4")
  -- what was deleted is gone from the findings, what is new is added, and a fail among it counts
  local function states(id)
    for _, one in ipairs(result.designs[1].findings) do
      if one.rule == id and one.about == "roof_plane south" then return one.was .. " " .. one.is end
    end
  end
  lu.assertEquals(states("new/other"), "none fail")
  lu.assertEquals(states("old/mine"), "pass none")
  lu.assertEquals(states("irc/ridge-clearance"), "pass review")
  lu.assertTrue(result.counts.newly_fail >= 1 and result.counts.newly_for_person >= 1)
  lu.assertTrue(result.counts.added > 0 and result.counts.gone > 0)
end

-- As people read it: an edition that moved citations, a number cited anew, one that only one side has.
function TestCompare:test_text_of_editions_and_citations()
  local code_of = "adopts:\n  - {book: nec, edition: %d, from: 2023-01-01, cite: Ordinance 1}\n"
  local width = "  - {book: irc, edition: 2021, from: 2023-01-01, cite: Ordinance 1}\nvalues:\n  ridge_setback_small: [{from: 2024-01-01, edition: 2021, is: 20 in, cite: Ordinance %d}]\n"
  book("old", code_of:format(2020) .. width:format(2))
  book("new", code_of:format(2023) .. width:format(3))
  local told, code = text("old", "new", samples .. "standing.yaml", samples .. "failing.yaml")
  lu.assertEquals(code, 0, told)
  lu.assertStrContains(told, "edition 2020 -> 2023")
  lu.assertStrContains(told, "ridge_setback_small: 20 in, cited anew: old from 2024-01-01, Ordinance 2 -> new from 2024-01-01, Ordinance 3")
  lu.assertStrContains(told, "cited anew nec/busbar: 705.12(B)(3) -> 705.12(B)")
  lu.assertStrContains(told, "All 2 designs, 2 of them compared")
end

function TestCompare:test_the_same_text_in_another_folder_is_no_change()
  local branch = plumb.folder() .. "/branch" -- not sought in, so that the name alone means the first
  os.execute(("mkdir '%s'"):format(branch))
  os.execute(("cp -r '%s/rules/companies/lantern-roofworks' '%s/'"):format(plumb.top, branch))
  local result, code = compare("marrow-bay+lantern-roofworks", "marrow-bay+" .. branch .. "/lantern-roofworks", samples .. "standing.yaml")
  lu.assertEquals(code, 0)
  lu.assertEquals(#result.changes.rules, 0)
  local path = branch .. "/lantern-roofworks/team-lift.lua"
  plumb.write(path, plumb.read(path) .. "\n-- another line\n")
  result = compare("marrow-bay+lantern-roofworks", "marrow-bay+" .. branch .. "/lantern-roofworks", samples .. "standing.yaml")
  lu.assertEquals(result.changes.rules[1].change, "rewritten")
end

function TestCompare:test_newly_open_is_told_and_decides_after_what_fails()
  book("old", "")
  book("new", "")
  write_rule("old/mine", "Mine", 'shall.be("It is there", true)')
  write_rule("new/mine", "Mine", 'shall.not_exceed("Layers", plane.layers, 2)')
  local result, code = compare("old", "new", samples .. "unfinished.yaml")
  lu.assertEquals(code, 2)
  lu.assertTrue(result.counts.newly_open >= 1)
  lu.assertEquals(result.counts.newly_fail, 0)
end

function TestCompare:test_a_number_that_comes_only_later()
  book("old", ridge("30 in"))
  book("tail", adopts .. "values:\n  ground_snow_load: [{from: 2031-01-01, is: 40 psf, cite: Ordinance 9}]\n")
  -- The value is one that the code leaves to towns: none is in force, and the report says from when there is one.
  os.execute(("mkdir -p '%s/code'"):format(folder))
  plumb.write(folder .. "/code/book.yaml", "book: code\ntitle: Code\nmaintained_by: nobody\nrole: authority\nscope: roofs\n")
  plumb.write(folder .. "/code/values.yaml",
    "gap: {kind: length, stricter: larger, says: a gap, given_above: true}\n")
  write_rule("code/gap", "Gap", 'shall.be_at_least("Gap", 10 * inch, book.gap)')
  plumb.write(folder .. "/code/gap.lua", (plumb.read(folder .. "/code/gap.lua"):gsub("function%(plane%)", "function(plane, book)")))
  local given = "adopts: [{book: code, from: 2020-01-01}]\nvalues:\n  gap: [{from: %s, is: 4 in, cite: O}]\n"
  book("now", given:format("2020-01-01"))
  book("later", given:format("2031-01-01"))
  local result, code, errors = compare("now", "later", samples .. "standing.yaml")
  lu.assertEquals(code, 2, errors)
  local value = pick(result.changes.values, "value", "gap")
  lu.assertEquals({ value.was, value.is, value.next }, { "4 in", cjson.null, "2031-01-01" })
  local flat = text("now", "later", samples .. "standing.yaml")
  lu.assertStrContains(flat, "gap: 4 in -> no number in force; the next holds from 2031-01-01")
  lu.assertStrContains(flat, "stands -> open: code/gap, roof_plane south")
end

function TestCompare:test_a_company_may_not_loosen()
  book("soft", "values:\n  ridge_setback_small: [{from: 2024-01-01, is: 6 in, cite: Ours}]\n", "company")
  local result, code, errors = compare("marrow-bay", "marrow-bay+soft", samples .. "failing.yaml")
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "may only tighten")
  lu.assertEquals(#result.changes.values, 0) -- the town's number stands
  lu.assertEquals(result.counts.no_longer_fail, 0)
  lu.assertEquals(pick(result.problems, "code", "company-loosens").place.line, 7)
end

function TestCompare:test_a_book_edited_half_way()
  book("town", adopts)
  book("half", "adopts:\n  - {book: irc, edition: 2021, from:\n")
  local result, code, errors = compare("town", "half", samples .. "standing.yaml")
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "half/book.yaml")
  lu.assertEquals(result.changes, cjson.null)
  lu.assertFalse(result.designs[1].compared)
  lu.assertStrContains((text("town", "half", samples .. "standing.yaml")), "Not compared")
end

function TestCompare:test_a_broken_rule_is_no_pass()
  book("old", "")
  book("new", "")
  write_rule("old/mine", "Mine", 'shall.be("It is there", true)')
  write_rule("new/mine", "Mine", "shall.be(plane.nothing_like_it, true)")
  local result, code, errors = compare("old", "new", samples .. "standing.yaml")
  lu.assertEquals(code, 4)
  lu.assertStrContains(errors, "nothing_like_it")
  lu.assertEquals(result.designs[1].findings[1].is, "open")
end

function TestCompare:test_unknown_books_and_designs()
  local result, code, errors = compare("marow-bay", "marrow-bay", samples .. "standing.yaml")
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "marrow-bay")
  lu.assertFalse(result.designs[1].compared)
  result, code = compare("marrow-bay", "marrow-bay+lantern-roofworks", folder .. "/none.yaml", samples .. "standing.yaml")
  lu.assertEquals(code, 3)
  lu.assertEquals({ result.designs[1].compared, result.designs[2].compared }, { false, true })
  -- Each problem once, though both sides and many designs tell it.
  lu.assertEquals(#result.problems, 1)
end

function TestCompare:test_the_command_line()
  local function refused(pattern, ...)
    local _, code, errors = plumb.run({ "compare", ... })
    lu.assertEquals(code, 64)
    lu.assertStrContains(errors, pattern)
  end
  refused("two stacks of books", "marrow-bay")
  refused("the day whose rules are meant", "marrow-bay", "larch-pass")
  refused("no stack of books", "marrow-bay+", "marrow-bay", samples .. "standing.yaml")
  refused("standing.yaml' is no stack of books; two of them go before the designs", "marrow-bay", samples .. "standing.yaml")
  refused("--against goes with --book", "marrow-bay", "marrow-bay", samples .. "standing.yaml", "--against", "2024-01-01")
  refused("--on and --against", "--book", "marrow-bay", samples .. "standing.yaml", "--on", "2024-01-01")
  refused("no day of the calendar", "--book", "marrow-bay", samples .. "standing.yaml", "--on", "2024-02-30", "--against", "2024-01-01")
  refused("no day of the calendar", "--book", "marrow-bay", samples .. "standing.yaml", "--on", "2024-01-01", "--against", "then")
  -- Designs of different days, and no day named.
  local other = folder .. "/other.yaml"
  plumb.write(other, plumb.change(plumb.sample("standing"), "permit_application_date: 2026-08-03", "permit_application_date: 2025-08-03"))
  refused("are of 2026-08-03: say for which day", "marrow-bay", "marrow-bay+lantern-roofworks", samples .. "standing.yaml", other)
  local _, code = compare("marrow-bay", "marrow-bay+lantern-roofworks", samples .. "standing.yaml", other, "--on", "2026-08-03",
    "--catalogues", plumb.top .. "/samples/catalogue")
  lu.assertEquals(code, 0)
  -- Only the books, on a day.
  local result
  result, code = compare("marrow-bay", "larch-pass", "--on", "2026-08-03")
  lu.assertEquals({ code, #result.designs }, { 0, 0 })
  lu.assertTrue(#result.changes.values > 0)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

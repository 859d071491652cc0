-- New books, rules, cases and designs: what they write works as it is, or says what to fill in.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestNew = {}

local folder
function TestNew:setUp()
  folder = plumb.folder() .. "/new"
  os.execute("rm -rf '" .. folder .. "' && mkdir '" .. folder .. "'")
end

local function new(...)
  local words = { "new", ... }
  words[#words + 1] = "--in"
  words[#words + 1] = folder
  return plumb.run(words)
end

function TestNew:test_a_new_book_is_proved_and_checks()
  local output, code, errors = new("book", "my-town", "--adopts", "nec@2023,irc@2021,osha", "--on", "2026-03-01")
  lu.assertEquals({ code, errors }, { 0, "" })
  lu.assertStrContains(output, "my-town/book.yaml")
  local said, proved = plumb.run({ "prove", folder .. "/my-town", "--stir" })
  lu.assertEquals(proved, 0, said)
  lu.assertStrContains(said, "100 %")
  local lint, clean = plumb.run({ "lint", folder .. "/my-town" })
  lu.assertEquals({ lint, clean }, { "Nothing is amiss.\n", 0 })
  -- Numbers that the codes leave to towns stand ready as comments.
  lu.assertStrContains(plumb.read(folder .. "/my-town/book.yaml"), "from: 2026-03-01")
  local report, checked = plumb.run({ "check", plumb.top .. "/samples/quill-hollow/standing.yaml", "--format", "json",
    "--book", folder .. "/my-town", "--on", "2026-08-03" })
  lu.assertTrue(checked == 0 or checked == 1 or checked == 2, tostring(checked))
  lu.assertEquals(#cjson.decode(report).problems, 0)
end

function TestNew:test_a_book_of_no_code_is_proved_too()
  local _, code = new("book", "alone")
  lu.assertEquals(code, 0)
  local said, proved = plumb.run({ "prove", folder .. "/alone" })
  lu.assertEquals(proved, 0, said)
end

-- A book is sought by its name in the folders for books; one that stands here is named as what it is.
function TestNew:test_a_book_in_this_folder_is_pointed_at()
  new("book", "my-town")
  local pipe = assert(io.popen(("cd '%s' && '%s' new rule my-town/other 2>&1"):format(folder, plumb.program)))
  lu.assertStrContains(pipe:read("a"), "there is no book my-town; the folder ./my-town is one: say --books .\n")
  local _, _, code = pipe:close()
  lu.assertEquals(code, 3)
  pipe = assert(io.popen(("cd '%s' && '%s' new rule my-town/other --books . 2>&1"):format(folder, plumb.program)))
  lu.assertStrContains(pipe:read("a"), "my-town/other.lua")
  lu.assertTrue(pipe:close())
end

function TestNew:test_nothing_is_written_over()
  new("book", "my-town")
  local before = plumb.read(folder .. "/my-town/book.yaml")
  plumb.write(folder .. "/my-town/book.yaml", before .. "# mine\n")
  local _, code, errors = new("book", "my-town")
  lu.assertEquals(code, 74)
  lu.assertStrContains(errors, "is not written over")
  lu.assertEquals(plumb.read(folder .. "/my-town/book.yaml"), before .. "# mine\n")
  new("design", "house")
  _, code = new("design", "house")
  lu.assertEquals(code, 74)
  plumb.run({ "new", "rule", folder .. "/my-town/roof" })
  _, code = plumb.run({ "new", "rule", folder .. "/my-town/roof" })
  lu.assertEquals(code, 74)
  _, code = plumb.run({ "new", "case", folder .. "/my-town/near-meter" })
  lu.assertEquals(code, 74)
end

function TestNew:test_a_folder_that_cannot_be_made()
  local _, code, errors = plumb.run({ "new", "book", "my-town", "--in", folder .. "/nowhere/at/all" })
  lu.assertEquals(code, 74)
  lu.assertStrContains(errors, "cannot be made: the one it is to stand in is not there")
end

function TestNew:test_a_new_rule_says_that_it_is_not_written_yet()
  new("book", "my-town")
  local _, code = plumb.run({ "new", "rule", folder .. "/my-town/roof" })
  lu.assertEquals(code, 0)
  local said, proved = plumb.run({ "prove", folder .. "/my-town" })
  lu.assertEquals(proved, 2)
  lu.assertStrContains(said, "all as expected")
  lu.assertStrContains((said:gsub("%s+", " ")), "my-town/roof: a passing, a failing, an open case")
end

function TestNew:test_a_new_case_says_what_to_fill_in()
  new("book", "my-town")
  os.remove(folder .. "/my-town/cases/near-meter.yaml")
  local _, code = plumb.run({ "new", "case", folder .. "/my-town/near-meter" })
  lu.assertEquals(code, 0)
  local _, proved, errors = plumb.run({ "prove", folder .. "/my-town" })
  lu.assertEquals(proved, 3)
  lu.assertStrContains((errors:gsub("%s+", " ")), "asserts nothing")
end

-- Every kind stands on the sheet; filled in as it is, it is a design that has told nothing yet.
function TestNew:test_a_survey_sheet()
  local _, code = new("design", "house")
  lu.assertEquals(code, 0)
  local text = plumb.read(folder .. "/house.yaml")
  for _, name in ipairs({ "permit_application_date", "exposure", "layers", "conductor_size", "fed_from",
    "protecting_device", "bonding", "fall_protection", "sprinklers", "orientation" }) do
    lu.assertStrContains(text, name .. ":")
  end
  lu.assertStrContains(text, "4/12") -- an example with its unit
  local report, checked = plumb.run({ "check", folder .. "/house.yaml", "--format", "json", "--book", "irc@2021",
    "--on", "2026-08-03" })
  report = cjson.decode(report)
  lu.assertEquals(checked, 2)
  lu.assertEquals(#report.problems, 0)
  lu.assertEquals(report.counts.fail, 0)
  lu.assertEquals(report.counts.pass, 0) -- unknown is never pass
  lu.assertTrue(report.counts.open > 0)
  -- Without a day it says what to fill in.
  local _, unread = plumb.run({ "check", folder .. "/house.yaml", "--book", "irc@2021" })
  lu.assertEquals(unread, 3)
end

-- Every model stands in the catalogue; a design that names it knows its models, and nothing of them.
function TestNew:test_a_catalogue()
  local _, code = new("catalogue", "shelf")
  lu.assertEquals(code, 0)
  local text = plumb.read(folder .. "/shelf.yaml")
  local lists = 0
  for _ in text:gmatch("\n%l+_models:\n  %- name: %l+_model%-1\n") do lists = lists + 1 end
  local _, all = plumb.read(plumb.top .. "/core/design/facts/design.facts"):gsub("LIST%(%l+_models,", "")
  lu.assertTrue(all > 5)
  lu.assertEquals(lists, all)
  new("design", "house")
  local sheet = plumb.read(folder .. "/house.yaml")
  local named, rows = sheet:gsub("\ncatalogue:\n", "\ncatalogue: [shelf]\n")
  local modelled, models = named:gsub("(%- name: module_row%-1\n[^\n]*\n    model:)", "%1 module_model-1")
  lu.assertEquals({ rows, models }, { 1, 1 })
  plumb.write(folder .. "/house.yaml", modelled)
  local report, checked = plumb.run({ "check", folder .. "/house.yaml", "--format", "json", "--book", "nec@2023",
    "--on", "2026-08-03" })
  report = cjson.decode(report)
  lu.assertEquals({ checked, #report.problems, report.counts.pass }, { 2, 0, 0 })
  plumb.write(folder .. "/house.yaml", (modelled:gsub("module_model%-1", "module_model-2")))
  local _, unread, errors = plumb.run({ "check", folder .. "/house.yaml", "--book", "nec@2023", "--on", "2026-08-03" })
  lu.assertEquals(unread, 3, errors)
end

function TestNew:test_the_command_line()
  local wrong = {
    { { "new" }, 64, "say what is new" },
    { { "new", "bok", "x" }, 64, "did you mean book" },
    { { "new", "book", "../x" }, 64, "letters, digits" },
    { { "new", "book", "x", "--adopts", "ircc@2021" }, 3, "irc" },
    { { "new", "book", "x", "--adopts", "irc@1999" }, 64, "has no edition '1999'" },
    { { "new", "book", "x", "--adopts", "irc" }, 64, "has no edition" },
    { { "new", "rule", "roof" }, 64, "named by its book" },
    { { "new", "rule", "no-such-town/roof" }, 3, "no-such-town" },
    { { "new", "design", "a/b" }, 64, "letters, digits" },
    { { "new", "catalogue", "a.yaml" }, 64, "letters, digits" },
    { { "new", "catalog", "x" }, 64, "did you mean catalogue" },
    { { "new", "design", "x", "-b", "irc@2021" }, 64, "no option -b" }, -- a sheet is of no book
  }
  for _, one in ipairs(wrong) do
    one[1][#one[1] + 1] = "--in"
    one[1][#one[1] + 1] = folder
    local _, code, errors = plumb.run(one[1])
    lu.assertEquals(code, one[2], table.concat(one[1], " "))
    lu.assertStrContains((errors:gsub("%s+", " ")), one[3])
  end
  local pipe = io.popen("ls '" .. folder .. "'")
  lu.assertEquals(pipe:read("a"), "")
  pipe:close()
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

-- Where many findings are open, reports say first which facts most of them wait for.
local lu = require("luaunit")
local plumb = require("plumb")

local TITLE = "Give these facts first"

local function report(text, format)
  local path = plumb.folder() .. "/house.yaml"
  plumb.write(path, text)
  return (plumb.run({ "check", path, "--book", "marrow-bay", "--format", format, "--catalogues", plumb.top .. "/samples/catalogue" }))
end

-- The lines of the list as { fact, count }.
local function list(text)
  local rows = {}
  local part = text:match(TITLE .. "\n(.-)\n\n")
  for count, fact in (part or ""):gmatch("\n +(%d+)  ([%w_ ]+)") do rows[#rows + 1] = { fact, math.tointeger(tonumber(count)) } end
  return rows
end

local BLANK = "title: Blank\nproject: {permit_application_date: 2026-05-04}\n"

TestWanted = {}

function TestWanted:test_a_blank_design()
  local text = report(BLANK, "text")
  local rows = list(text)
  lu.assertEquals(#rows, 10)
  lu.assertEquals(rows[1][1], "circuits")
  for i = 2, #rows do lu.assertTrue(rows[i][2] <= rows[i - 1][2], "the most first") end
  for _, row in ipairs(rows) do
    -- As many as say so below.
    lu.assertEquals(select(2, text:gsub("\n   to give   " .. row[1] .. ", at ", "")), row[2], row[1])
  end
  lu.assertTrue(text:find(TITLE, 1, true) < text:find("Needs action", 1, true))
end

function TestWanted:test_what_is_given_goes_from_the_list()
  local rows = list(report(BLANK .. "circuits: none\n", "text"))
  lu.assertEquals(rows[1][1], "roof")
  for _, row in ipairs(rows) do lu.assertNotEquals(row[1], "circuits") end
end

function TestWanted:test_the_page_has_it_too()
  local page = report(BLANK, "html")
  lu.assertStrContains(page, TITLE)
  lu.assertStrContains(page, '<th scope="row">circuits</th>')
end

-- A person can write what stands there, and learns that a thing may be absent, or stand in a catalogue.
function TestWanted:test_examples_are_what_one_would_write()
  local text = report(BLANK, "text"):gsub("\n +", " ")
  for _, example in ipairs {
    "circuits: [{name: circuit-1, role: PV source, …}], or none where there is none",
    "roof: {shape: gable, …}",
    "service: {rating: 200 A, …}",
    "module_rows: [{name: module_row-1, model: the-name, …}], or none where there is none",
  } do lu.assertStrContains(text, "for example: " .. example .. " ") end
  lu.assertStrContains(text, "is laid out by: plumbrule new design NAME")
  text = report(BLANK .. "module_rows: none\nbranches: none\nstrings: none\nroof: {shape: gable}\n", "text"):gsub("\n +", " ")
  lu.assertStrContains(text, "for example: module_models: [{name: module_model-1, maker: Quillon, …}], or in a file that catalogue names")
end

-- What is to be done does not stand under the heading of the list.
function TestWanted:test_the_page_says_where_the_list_ends()
  local page = report(BLANK, "html")
  lu.assertTrue(page:find(TITLE, 1, true) < page:find("<h2>Needs action</h2>", 1, true))
  lu.assertTrue(page:find("<h2>Needs action</h2>", 1, true) < page:find('<ol class="actions">', 1, true))
  lu.assertEquals(plumb.count(report(plumb.sample("failing"), "html"), "<h2>Needs action</h2>"), 0)
end

function TestWanted:test_few_open_findings_say_it_themselves()
  local text = report(plumb.sample("standing"), "text")
  lu.assertEquals(plumb.count(text, TITLE), 0)
  lu.assertEquals(plumb.count(report(plumb.sample("standing"), "html"), TITLE), 0)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result == 0)

-- The books stacked as they are used: each town, a fire district over it, a company over both. No stack has a problem,
-- and what the company or the district tightens holds whatever the town says.
local lu = require("luaunit")
local plumb = require("plumb")

local books = plumb.top .. "/rules"
-- A house of the sample that lies in the town, and the widths that hold at its ridge while little is covered.
local towns = {
  { name = "marrow-bay", design = "quill-hollow/standing", ridge = 36 },
  { name = "larch-pass", design = "coast-and-summit/fennel-row", ridge = 18 },
  { name = "ellowfield", design = "quill-hollow/standing", ridge = 18 },
}
local district, company = "reed-hollow-fire", "lantern-roofworks"

local function check(town, stack, on, change)
  local text = plumb.read(plumb.top .. "/samples/" .. town.design .. ".yaml")
  if change then text = plumb.change(text, change[1], change[2]) end
  return plumb.check(text, { books = stack, directory = books, on = on or "2026-08-03" })
end

local function limit(report, rule, about, what)
  return plumb.test(plumb.find(report, rule, about), what).limit.value
end

TestStacks = {}

function TestStacks:test_a_company_works_in_each_town()
  for _, town in ipairs(towns) do
    local report = check(town, { town.name, company })
    lu.assertEquals(report.problems, {}, town.name)
    lu.assertEquals(limit(report, "irc/access-pathway", "roof_plane:south", "Widest clear strip"), 48, town.name)
    lu.assertEquals(limit(report, "irc/ridge-clearance", "roof_plane:south", "Clear width"), town.ridge, town.name)
    lu.assertEquals(plumb.find(report, company .. "/team-lift", "jobsite:jobsite").kind, "pass", town.name)
    -- Five feet up, below a higher eave: the law only asks what lies there, the company asks for protection.
    local low = { town.name == "larch-pass" and "working_height: 20 ft" or "working_height: 10 ft", "working_height: 5 ft" }
    lu.assertEquals(plumb.find(check(town, { town.name }, nil, low), "osha/fall-protection", "jobsite:jobsite").kind, "review", town.name)
    report = check(town, { town.name, company }, nil, low)
    lu.assertEquals(report.problems, {}, town.name)
    lu.assertEquals(plumb.find(report, "osha/fall-protection", "jobsite:jobsite").kind, "pass", town.name)
  end
end

function TestStacks:test_the_towns_number_stands_before_the_companys_begins()
  for _, town in ipairs(towns) do
    local report = check(town, { town.name, company }, "2025-12-31")
    lu.assertEquals(report.problems, {}, town.name)
    lu.assertEquals(limit(report, "irc/access-pathway", "roof_plane:south", "Widest clear strip"), 36, town.name)
  end
end

function TestStacks:test_a_district_over_a_town_and_a_company_over_both()
  for i = 1, 2 do -- those under the residential code of 2021, for which the district wrote its numbers
    local town = towns[i]
    local report = check(town, { town.name, district, company })
    lu.assertEquals(report.problems, {}, town.name)
    lu.assertEquals(limit(report, "irc/access-pathway", "roof_plane:south", "Widest clear strip"), 48, town.name)
    lu.assertEquals(limit(report, "irc/ridge-clearance", "roof_plane:south", "Clear width"), 36, town.name)
    lu.assertEquals(plumb.find(report, district .. "/roof-plan").kind, "pass", town.name)
    report = check(town, { town.name, district }, "2025-04-30")
    lu.assertEquals(report.problems, {}, town.name)
    lu.assertEquals(limit(report, "irc/access-pathway", "roof_plane:south", "Widest clear strip"), 40, town.name)
    lu.assertEquals(limit(report, "irc/ridge-clearance", "roof_plane:south", "Clear width"), 24, town.name)
  end
  -- Ellowfield went on to the code of 2024: numbers written for another edition are not taken over in silence.
  local report = check(towns[3], { towns[3].name, district })
  lu.assertTrue(#report.problems > 0)
end

TestProofs = {}

-- Every book: its cases come out as expected, no rule lacks a passing, a failing, an open case, no value goes unread,
-- and at least nine moves of ten are noticed.
function TestProofs:test_every_book_is_proved()
  local list = assert(io.popen("cd '" .. books .. "' && ls -d */*/"))
  local count = 0
  for path in list:lines() do
    local book = path:match("/(.-)/$")
    local output, code, errors = plumb.run({ "prove", book, "--books", books })
    lu.assertEquals({ code, errors }, { 0, "" }, book .. ": " .. output)
    count = count + 1
  end
  list:close()
  lu.assertTrue(count >= 12, count)
end

function TestProofs:test_nine_moves_of_ten_are_noticed()
  local list = assert(io.popen("cd '" .. books .. "' && ls -d */*/"))
  for path in list:lines() do
    local book = path:match("/(.-)/$")
    if book ~= "nec" then -- its moves take longer than a test may
      local output = plumb.run({ "prove", book, "--books", books, "--stir" })
      local share = tonumber(output:match("moves, (%d+) %%"))
      lu.assertTrue(share ~= nil and share >= 90, book .. ": " .. tostring(share))
    end
  end
  list:close()
end

function TestProofs:test_every_book_is_lint_free()
  local list = assert(io.popen("cd '" .. books .. "' && ls -d */*/"))
  for path in list:lines() do
    local book = path:match("/(.-)/$")
    local output, code = plumb.run({ "lint", book, "--books", books })
    lu.assertEquals({ output, code }, { "Nothing is amiss.\n", 0 }, book)
  end
  list:close()
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

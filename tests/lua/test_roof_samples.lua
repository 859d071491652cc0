-- Three roofs in two towns: a windy coast and snowy mountains. What stands in one fails in the other, for
-- the right reason.
local lu = require("luaunit")
local plumb = require("plumb")

local function check(name, town, options)
  options = options or {}
  options.books = { town }
  return plumb.check(plumb.read(plumb.top .. "/samples/coast-and-summit/" .. name .. ".yaml"), options)
end

-- Findings about the roof that are not settled: everything but what is electrical or papers.
local function unsettled(report)
  local list = {}
  for _, finding in ipairs(report.findings) do
    local book = finding.rule:match("^(.-)/")
    local is_roof = book == "irc" or book == "asce" or book == "osha" or book == "iebc" or book == "ifc"
    if is_roof and (finding.kind == "fail" or finding.kind == "open" or finding.kind == "review") then
      list[#list + 1] = finding.kind .. " " .. finding.rule .. " " .. finding.about.name
    end
  end
  return list
end

local function failing_tests(finding)
  local list = {}
  for _, test in ipairs(finding.tests) do
    if test.kind == "fail" then list[#list + 1] = test end
  end
  return list
end

TestThreeRoofs = {}

function TestThreeRoofs:test_the_gable_of_the_mountains_fails_in_the_wind_of_the_coast()
  lu.assertEquals(unsettled(check("fennel-row", "larch-pass")), {})
  local windy = check("fennel-row", "marrow-bay")
  lu.assertEquals(unsettled(windy), { "fail asce/clamp-uplift racking" })
  local clamp = plumb.test(plumb.find(windy, "asce/clamp-uplift"), "Uplift on a clamp")
  lu.assertStrContains(clamp.what, "low-1-1") -- the module in the corner of eave and rake
  lu.assertTrue(clamp.actual.value > clamp.limit.value)
  lu.assertEquals(clamp.limit.value, 480)
  local uplift = plumb.test(plumb.find(windy, "asce/module-wind", "module_model:Quillon Q440"), "Net uplift")
  lu.assertStrContains(uplift.what, "zone 3e")
end

function TestThreeRoofs:test_the_hip_of_the_coast_fails_in_the_snow_of_the_mountains()
  lu.assertEquals(unsettled(check("osprey-rise", "marrow-bay")), {})
  local snowy = check("osprey-rise", "larch-pass")
  -- What drifts over a hip is not at hand and is said so, once for all planes and parts.
  lu.assertEquals(unsettled(snowy), { "review asce/drifting-snow roof", "fail asce/rafters west", "fail asce/rafters south",
    "fail iebc/gravity-increase west", "fail iebc/gravity-increase south" })
  for _, plane in ipairs({ "west", "south" }) do
    local rafters = plumb.find(snowy, "asce/rafters", "roof_plane:" .. plane)
    for _, test in ipairs(failing_tests(rafters)) do lu.assertStrContains(test.what, "snow") end
    lu.assertTrue(#failing_tests(rafters) > 0)
    lu.assertEquals(plumb.test(rafters, "without the array under live load").kind, "pass")
  end
end

function TestThreeRoofs:test_the_low_slope_of_the_coast_fails_in_the_snow_of_the_mountains()
  lu.assertEquals(unsettled(check("tallow-court", "marrow-bay")), {})
  local snowy = check("tallow-court", "larch-pass")
  lu.assertEquals(unsettled(snowy), { "fail asce/rafters deck", "fail iebc/gravity-increase deck" })
  for _, test in ipairs(failing_tests(plumb.find(snowy, "asce/rafters", "roof_plane:deck"))) do
    lu.assertStrContains(test.what, "snow")
  end
end

-- The same house higher up, and before the town raised its numbers.
function TestThreeRoofs:test_snow_by_elevation_and_by_date()
  local text = plumb.read(plumb.top .. "/samples/coast-and-summit/fennel-row.yaml")
  local function down(elevation, on)
    local report = plumb.check(plumb.change(text, "elevation: 7100 ft", "elevation: " .. elevation),
      { books = { "larch-pass" }, on = on })
    return plumb.test(plumb.find(report, "asce/module-wind", "module_model:Quillon Q440"), "Downward load").actual.value
  end
  lu.assertTrue(down("6000 ft") < down("6001 ft"))
  lu.assertEquals(down("7100 ft"), down("7500 ft"))
  lu.assertTrue(down("7500 ft") < down("7501 ft"))
  lu.assertTrue(down("7100 ft", "2024-06-30") < down("7100 ft", "2024-07-01"))
  -- Above the highest band nothing is in force: open, not a pass.
  local beyond = plumb.check(plumb.change(text, "elevation: 7100 ft", "elevation: 9001 ft"), { books = { "larch-pass" } })
  lu.assertEquals(plumb.find(beyond, "asce/rafters", "roof_plane:south").kind, "open")
end

-- An inland city on the newest codes: no snow, so no table of 7-22 that is not at hand is asked for.
function TestThreeRoofs:test_the_gable_in_the_inland_city()
  local report = check("fennel-row", "ellowfield")
  lu.assertEquals(plumb.find(report, "asce/rafters", "roof_plane:south").kind, "pass")
  lu.assertEquals(plumb.find(report, "irc/ridge-clearance", "roof_plane:south").cite, "R329.6.2")
  local before = check("fennel-row", "ellowfield", { on = "2025-12-31" })
  lu.assertEquals(plumb.find(before, "irc/ridge-clearance", "roof_plane:south").cite, "R324.6.2")
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

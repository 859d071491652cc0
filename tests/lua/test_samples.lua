-- The sample house three times: as it was first drawn, while facts are missing, and put right.
local lu = require("luaunit")
local plumb = require("plumb")

TestQuillHollow = {}

local function kinds(report, kind)
  local list = {}
  for _, finding in ipairs(report.findings) do
    if finding.kind == kind then list[#list + 1] = finding.rule .. "|" .. finding.about.name end
  end
  return list
end

function TestQuillHollow:test_the_house_put_right_stands()
  local report = plumb.check(plumb.sample("standing"))
  lu.assertEquals(report.exit, 0)
  lu.assertEquals(#kinds(report, "fail") + #kinds(report, "open") + #kinds(report, "review"), 0)
  lu.assertEquals(report.problems, {})
  lu.assertTrue(report.counts.pass >= 20)
  lu.assertEquals(report.on, "2026-08-03") -- the permit application date of the design
end

function TestQuillHollow:test_the_first_drawing_fails_for_its_three_reasons()
  local report = plumb.check(plumb.sample("failing"))
  lu.assertEquals(report.exit, 1)
  -- A 125 A busbar behind a 125 A main: 125 A + 125 % of 32 A.
  local busbar = plumb.find(report, "nec/busbar")
  lu.assertEquals(busbar.kind, "fail")
  lu.assertEquals(busbar.level, "error")
  local sum = plumb.test(busbar, "Protecting device plus 125 %")
  lu.assertAlmostEquals(sum.actual.value, 165, 1e-9)
  lu.assertEquals(sum.limit.value, 125)
  lu.assertAlmostEquals(sum.margin, -0.32, 1e-9)
  -- A group's margin is its best option's worst: 165 A against 120 % of 125 A.
  lu.assertAlmostEquals(busbar.tests[1].margin, -0.1, 1e-9)
  -- A 440 W module on a 425 W converter.
  local module = plumb.test(plumb.find(report, "nec/converter-module", "string:string-1"), "Rated power")
  lu.assertEquals({ module.actual.value, module.limit.value, module.kind }, { 440, 425, "fail" })
  -- The array stands 17.5 in below the ridge: 210 in of slope less 44 in, two modules and a gap.
  local ridge = plumb.test(plumb.find(report, "irc/ridge-clearance", "roof_plane:south"), "Clear width")
  lu.assertAlmostEquals(ridge.actual.value, 210 - 44 - 2 * 74 - 0.5, 1e-6)
  lu.assertEquals(ridge.limit.value, 36)
end

function TestQuillHollow:test_the_survey_names_each_blank_with_its_place()
  local text = plumb.sample("unfinished")
  local report = plumb.check(text)
  lu.assertEquals(report.exit, 2)
  lu.assertEquals(#kinds(report, "fail"), 0)
  local missing = {}
  local function collect(tests)
    for _, test in ipairs(tests) do
      for _, option in ipairs(test.options or {}) do collect(option.tests) end
    end
  end
  for _, finding in ipairs(report.findings) do
    collect(finding.tests)
    for _, one in ipairs(finding.missing) do
      missing[one.fact:match("(%S+)$")] = one.place.line
    end
  end
  local line = 0
  local blanks = 0
  for text_line in text:gmatch("([^\n]*)\n") do
    line = line + 1
    local name = text_line:match("^%s+([%a_]+):$")
    if name == "layers" or name == "protecting_device" or name == "design_low_temperature"
      or name == "fall_protection" then
      blanks = blanks + 1
      lu.assertEquals(missing[name], line, name)
    end
  end
  lu.assertEquals(blanks, 4)
end

function TestQuillHollow:test_each_edition_in_force_on_its_day()
  local day_before = plumb.check(plumb.sample("standing"), { on = "2026-06-30" })
  local first_day = plumb.check(plumb.sample("standing"), { on = "2026-07-01" })
  lu.assertEquals(plumb.find(day_before, "nec/busbar").cite, "705.12(B)(3)")
  lu.assertEquals(plumb.find(first_day, "nec/busbar").cite, "705.12(B)")
end

function TestQuillHollow:test_a_company_tightens_what_the_town_asks()
  local report = plumb.check(plumb.sample("standing"), { books = { "marrow-bay", "lantern-roofworks" } })
  local pathway = plumb.find(report, "irc/access-pathway", "roof_plane:south")
  lu.assertEquals(pathway.tests[1].limit.value, 48)
  lu.assertEquals(plumb.find(report, "lantern-roofworks/team-lift").kind, "pass")
end

function TestQuillHollow:test_same_input_same_bytes()
  local arguments = { "check", plumb.top .. "/samples/quill-hollow/failing.yaml", "--book", "marrow-bay", "--format", "json" }
  lu.assertEquals((plumb.run(arguments)), (plumb.run(arguments)))
end

-- Common practice, no source: what people of the trade expect of these sums.
TestCommonPractice = {}

local function calc(...)
  local output, code = plumb.run({ "calc", ... })
  lu.assertEquals(code, 0, output)
  return output
end

function TestCommonPractice:test_ten_kilowatts_take_a_sixty_ampere_breaker()
  -- 10 kW at 240 V x 1.25 = 52.1 A
  lu.assertStrContains(calc("ocpd_up", "current=52.1 A", "edition=2023"), "ocpd = 60 A")
end

function TestCommonPractice:test_twenty_three_modules_of_405_watts()
  -- 23 x 405 W = 9 315 W, about 9.3 kW; a module of about 40 lb
  local text = plumb.sample("standing")
  text = plumb.change(text, "model: Quillon Q440", "model: Quillon Q405", 2)
  text = plumb.change(text, "columns: 10, rows: 1", "columns: 12, rows: 1")
  text = plumb.change(text, "columns: 9, rows: 1", "columns: 11, rows: 1")
  local report = plumb.check(text)
  local power = plumb.test(plumb.find(report, "nec/inverter-input"), "Power of the array")
  lu.assertEquals(power.actual.value, 9315)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

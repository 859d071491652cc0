-- Makes a true report wrong in one place, as a wrong core would: the comparison must notice each.
local cjson = require("cjson")

local spoil = {}

local function choose(list) return #list > 0 and list[math.random(#list)] or nil end

local function findings_that(report, holds)
  local list = {}
  for _, finding in ipairs(report.findings) do
    if finding.rule ~= "plumbrule/scope" and holds(finding) then list[#list + 1] = finding end
  end
  return list
end

-- All tests of a report, those of ways, too.
local function tests_that(report, holds)
  local list = {}
  local function look(tests)
    for _, test in ipairs(tests) do
      if holds(test) then list[#list + 1] = test end
      for _, option in ipairs(test.options or {}) do look(option.tests) end
    end
  end
  for _, finding in ipairs(findings_that(report, function() return true end)) do look(finding.tests) end
  return list
end

local function one_test(holds, change)
  return function(report)
    local test = choose(tests_that(report, holds))
    if test then change(test) end
    return test ~= nil
  end
end
local function one_finding(holds, change)
  return function(report)
    local finding = choose(findings_that(report, holds))
    if finding then change(finding, report) end
    return finding ~= nil
  end
end

local function is_kind(kind) return function(it) return it.kind == kind end end
-- A millionth of a temperature near 0 °F is too little to notice on the scale that begins at nothing.
local function has_number(side)
  return function(test)
    local amount = test[side]
    return amount and type(amount.value) == "number" and amount.value ~= 0 and amount.unit ~= "°F" and amount.unit ~= "°C"
  end
end
local function has_margin(test) return test.margin ~= cjson.null and test.margin ~= 0 and test.relation ~= "one_of" end
local function to(kind) return function(it) it.kind = kind end end

spoil.ways = {
  ["a fail told as a pass"] = one_finding(is_kind("fail"), to("pass")),
  ["an open told as a pass"] = one_finding(is_kind("open"), to("pass")),
  ["a review told as a pass"] = one_finding(is_kind("review"), to("pass")),
  ["a pass told as a fail"] = one_finding(is_kind("pass"), to("fail")),
  ["what applies told as not applying"] = one_finding(is_kind("pass"), to("notApplicable")),
  ["an error told as a warning"] = one_finding(function(finding) return finding.level == "error" end, function(finding) finding.level = "warning" end),
  ["another edition cited"] = one_finding(function() return true end, function(finding) finding.cite = finding.cite .. "x" end),
  ["a failing test told as a pass"] = one_test(is_kind("fail"), to("pass")),
  ["an open test told as a pass"] = one_test(is_kind("open"), to("pass")),
  ["a margin a millionth wider"] = one_test(has_margin, function(test) test.margin = test.margin * 1.000001 end),
  ["a margin turned round"] = one_test(has_margin, function(test) test.margin = -test.margin end),
  ["no margin"] = one_test(has_margin, function(test) test.margin = cjson.null end),
  ["an actual amount a millionth larger"] = one_test(has_number("actual"), function(test) test.actual.value = test.actual.value * 1.000001 end),
  ["a limit a millionth larger"] = one_test(has_number("limit"), function(test) test.limit.value = test.limit.value * 1.000001 end),
  ["yes told as no"] = one_test(function(test) return test.actual and type(test.actual.value) == "boolean" end, function(test) test.actual.value = not test.actual.value end),
  ["at least told as at most"] = one_test(function(test) return test.relation == "at_least" end, function(test) test.relation = "not_exceed" end),
  ["something else compared"] = one_test(function(test) return test.relation ~= "broken" and test.relation ~= "one_of" end, function(test) test.what = "x" .. test.what end),
  ["a test left out"] = one_finding(function(finding) return #finding.tests > 0 end, function(finding) table.remove(finding.tests, math.random(#finding.tests)) end),
  ["a missing fact not named"] = one_finding(function(finding) return #finding.missing > 0 end, function(finding) table.remove(finding.missing) end),
  ["another fact missing"] = one_finding(function(finding) return #finding.missing > 0 end, function(finding) finding.missing[1].fact = "site: exposure of another" end),
  ["a way that fails told as met"] = one_test(function(test)
    for _, option in ipairs(test.options or {}) do
      if option.kind == "fail" then return true end
    end
  end, function(test)
    for _, option in ipairs(test.options) do
      if option.kind == "fail" then
        option.kind = "pass"
        return
      end
    end
  end),
  ["the best way's margin taken from another"] = one_test(function(test) return test.options and test.margin ~= cjson.null end, function(test) test.margin = test.margin + 0.001 end),
  ["another test that decides"] = one_finding(function(finding) return finding.kind ~= "notApplicable" end, function(finding)
    finding.message = "Something else " .. finding.message
  end),
  ["a finding left out"] = function(report)
    local chosen = choose(findings_that(report, function() return true end))
    for i, finding in ipairs(report.findings) do
      if finding == chosen then table.remove(report.findings, i) end
    end
    return chosen ~= nil
  end,
  ["a finding told twice"] = one_finding(function() return true end, function(finding, report) table.insert(report.findings, finding) end),
  ["a finding of another thing"] = one_finding(function() return true end, function(finding) finding.about.name = finding.about.name .. "-2" end),
}

-- Spoils the report of a line in each way that it offers. `hold(report)` gives the disagreements. `counts` counts, by way,
-- how often it was tried; those not noticed are told.
function spoil.try(line, hold, counts)
  local unnoticed = {}
  local names = {}
  for name in pairs(spoil.ways) do names[#names + 1] = name end
  table.sort(names)
  for _, name in ipairs(names) do
    local report = cjson.decode(line)
    if spoil.ways[name](report) then
      counts[name] = (counts[name] or 0) + 1
      if #hold(report) == 0 then unnoticed[#unnoticed + 1] = name end
    else
      counts[name] = counts[name] or 0
    end
  end
  return unnoticed
end

return spoil

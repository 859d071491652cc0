-- Three houses under three editions: nine stored reports. `sh tests/stored/write.sh` writes them anew, for a
-- change that is meant; what changes between the editions is told in docs/editions.md.
local lu = require("luaunit")
local plumb = require("plumb")
local electrical = require("electrical")

local houses = { quill = "quill-hollow", tern = "tern-lane", moss = "moss-end" }
local editions = { "2017", "2020", "2023" }

local function amount(value)
  if value == nil or value.value == nil then return "?" end
  local number = type(value.value) == "number" and ("%.6g"):format(value.value) or tostring(value.value)
  return type(value.unit) == "string" and number .. " " .. value.unit or number
end

local relations = { not_exceed = "<=", at_least = ">=", less_than = "<", more_than = ">", equal = "=", be = "is" }

local function add_tests(lines, tests, indent)
  for _, test in ipairs(tests) do
    if test.relation == "one_of" then
      for _, option in ipairs(test.options) do
        lines[#lines + 1] = ("%s%s: %s"):format(indent, option.name, option.kind)
        if option.kind == "pass" then add_tests(lines, option.tests, indent .. "  ") end
      end
    elseif test.actual then
      local margin = type(test.margin) == "number" and (" (%.4g)"):format(test.margin) or ""
      lines[#lines + 1] = ("%s%s %s: %s %s %s%s"):format(indent, test.kind, test.what, amount(test.actual),
        relations[test.relation] or test.relation, amount(test.limit), margin)
    else
      lines[#lines + 1] = ("%s%s %s"):format(indent, test.kind or "?", test.what or "?")
    end
  end
end

-- Places are left out: a line more in a sample is no change of what the code asks.
local function write(finding)
  local head = ("%s %s %s:%s [%s]"):format(finding.kind, finding.rule, finding.about.kind, finding.about.name, finding.cite)
  local lines = { head }
  if finding.kind ~= "notApplicable" then add_tests(lines, finding.tests, "  ") end
  return table.concat(lines, "\n")
end

local function review(house, edition) return electrical.report { rule = house, design = house, book = "nec@" .. edition } end

local function stored_path(house, edition) return ("%s/tests/stored/%s-%s.txt"):format(plumb.top, houses[house], edition) end

local function text_of(report)
  local parts = {}
  for i, finding in ipairs(report.findings) do parts[i] = write(finding) end
  return table.concat(parts, "\n") .. "\n"
end

-- The first line that is otherwise; a difference of whole reports takes minutes to show.
local function assert_same(text, stored)
  local lines, number = stored:gmatch("[^\n]*\n?"), 0
  for line in text:gmatch("[^\n]*\n?") do
    number = number + 1
    local old = lines()
    if line ~= old then lu.fail(("line %d is %q, stored is %q"):format(number, line, old)) end
  end
  lu.assertTrue(text == stored)
end

TestEditions = {}
for house, name in pairs(houses) do
  for _, edition in ipairs(editions) do
    TestEditions[("test_%s_%s"):format(name:gsub("-", "_"), edition)] = function()
      local text = text_of(review(house, edition))
      if os.getenv("STORED") == "write" then
        plumb.write(stored_path(house, edition), text)
      else
        assert_same(text, plumb.read(stored_path(house, edition)))
      end
    end
  end
end

-- Kind, limits and citation of each finding, without the house's own figures.
local function demands(report)
  local list = {}
  for _, finding in ipairs(report.findings) do list[finding.rule .. "|" .. finding.about.kind .. ":" .. finding.about.name] = write(finding) end
  return list
end

function TestEditions.test_what_changes_is_told()
  local told = plumb.read(plumb.top .. "/docs/editions.md")
  local changed, count = {}, 0
  for house in pairs(houses) do
    local before
    for _, edition in ipairs(editions) do
      local now = demands(review(house, edition))
      for about, text in pairs(now) do
        if before and before[about] ~= text then changed[about:match("^nec/([%w-]+)|")] = true end
      end
      before = now
    end
  end
  for rule in pairs(changed) do
    count = count + 1
    lu.assertTrue(told:find("`" .. rule .. "`", 1, true) ~= nil, rule .. " changes between editions; docs/editions.md is silent")
  end
  lu.assertTrue(count >= 20)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

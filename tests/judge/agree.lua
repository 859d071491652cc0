-- Holds the report of the core against what the second judge found: rule, thing, kind, level, citation, each test with
-- its relation, amounts and margin, ways of a group, missing facts, and the test that decides.
local cjson = require("cjson")
local quantity = require("quantity")
local words = require("words")

local agree = {}

local SHARE = 1e-9 -- of the larger amount

local function is_near(a, b) return a == b or math.abs(a - b) <= SHARE * math.max(math.abs(a), math.abs(b)) end

-- Is the reported amount what the judge has?
local function is_amount(reported, own)
  local kind, value = words.tag(own), reported.value
  if kind == "date" then return value == ("%04d-%02d-%02d"):format(own.date // 10000, own.date // 100 % 100, own.date % 100) end
  if kind == "number" then return type(value) == "number" and is_near(value, own) end
  if kind ~= "quantity" then return value == own end
  local unit = reported.unit
  local number = type(unit) == "string" and quantity.from(value, unit, own.dimension)
  if not number and type(unit) == "string" and quantity.spelled(unit) == own.dimension then number = value end
  -- Twelve digits are reported: near nothing they are of what was taken away.
  return number ~= nil and number ~= false and (is_near(number, own.number) or math.abs(number - own.number) < 1e-15)
end

-- \1 in the judge's text stands for any amount.
local function is_text(reported, own, is_beginning)
  if not own:find("\1", 1, true) then return is_beginning and reported:sub(1, #own) == own or not is_beginning and reported == own end
  local pattern = own:gsub("[%^$()%%.%[%]*+%-?]", "%%%0"):gsub("\1", ".-")
  return reported:find("^" .. pattern .. (is_beginning and "" or "$")) ~= nil
end

local hold_tests

local function hold_test(say, reported, own)
  local what = own.relation == "missing" and own.fact or own.what
  if own.relation == "unasked" then return say(what) end
  if reported.relation ~= own.relation then
    return say("%s: relation %s, not %s%s", what, reported.relation, own.relation, own.why and " (" .. tostring(own.why) .. ")" or "")
  end
  -- What is wrong with a rule each side says in its own words.
  if own.relation ~= "broken" and not is_text(reported.what, what) then say("says %q, not %q", reported.what, what) end
  if reported.kind ~= own.kind then say("%s: %s, not %s", what, reported.kind, own.kind) end
  local margin = reported.margin ~= cjson.null and reported.margin or nil
  if (margin == nil) ~= (own.margin == nil) then
    say("%s: margin %s, not %s", what, margin, own.margin)
  elseif margin and not is_near(margin, own.margin) and math.abs(margin - own.margin) > 1e-11 then
    say("%s: margin %.12g, not %.12g", what, margin, own.margin)
  end
  if own.actual ~= nil then
    if not is_amount(reported.actual, own.actual) then say("%s: actual %s %s is not the judge's", what, reported.actual.value, reported.actual.unit) end
    if not is_amount(reported.limit, own.limit) then say("%s: limit %s %s is not the judge's", what, reported.limit.value, reported.limit.unit) end
  end
  if own.options then
    if #reported.options ~= #own.options then return say("%s: %d ways, not %d", what, #reported.options, #own.options) end
    for i, option in ipairs(own.options) do
      local other = reported.options[i]
      if other.name ~= option.name then say("way %q, not %q", other.name, option.name) end
      if other.kind ~= option.kind then say("way %q: %s, not %s", option.name, other.kind, option.kind) end
      hold_tests(say, other.tests, option.tests)
    end
  end
end

function hold_tests(say, reported, own)
  if #reported ~= #own then
    local last = own[#own]
    return say("%d tests, not %d%s", #reported, #own, last and last.relation == "broken" and " (" .. tostring(last.why) .. ")"
      or last and last.relation == "unasked" and " (" .. last.what .. ")" or "")
  end
  for i, test in ipairs(own) do hold_test(say, reported[i], test) end
end

local function missing_of(list, tests)
  for _, test in ipairs(tests) do
    if test.relation == "missing" and not list[test.fact] then
      list[test.fact] = true
      list[#list + 1] = test.fact
    end
    for _, option in ipairs(test.options or {}) do missing_of(list, option.tests) end
  end
  return list
end

local function hold_finding(say, reported, own)
  if reported.kind ~= own.kind then say("is %s, not %s", reported.kind, own.kind) end
  if reported.level ~= own.level then say("level %s, not %s", reported.level, own.level) end
  if reported.cite ~= own.cite then say("cites %s, not %s", reported.cite, own.cite) end
  hold_tests(say, reported.tests, own.tests)
  local missing = missing_of({}, own.tests)
  local told = {}
  for i, one in ipairs(reported.missing) do told[i] = one.fact end
  if table.concat(told, "; ") ~= table.concat(missing, "; ") then say("misses %s, not %s", table.concat(told, "; "), table.concat(missing, "; ")) end
  local last = own.tests[#own.tests]
  local is_unasked = last and last.relation == "unasked"
  if not is_unasked and not is_text(reported.message, own.begins, true) then say("decides by %q, not by %q", reported.message, own.begins) end
end

-- What the core adds itself, without a rule of a book.
local function is_by_rule(finding) return finding.rule ~= "plumbrule/scope" end

-- All disagreements as sentences. `rules` counts findings held by rule, `kinds` by kind.
function agree.hold(report, findings, rules, kinds)
  local told, by_key = {}, {}
  for _, finding in ipairs(report.findings) do
    local key = finding.rule .. " of " .. finding.about.kind .. ":" .. finding.about.name
    if is_by_rule(finding) then
      by_key[key] = by_key[key] or {}
      table.insert(by_key[key], finding)
    end
  end
  for _, own in ipairs(findings) do
    local key = own.rule .. " of " .. own.about
    local reported = by_key[key] and table.remove(by_key[key], 1)
    if not reported then
      told[#told + 1] = key .. ": the core says nothing of it"
    else
      hold_finding(function(text, ...) told[#told + 1] = key .. ": " .. text:format(...) end, reported, own)
      rules[own.rule] = (rules[own.rule] or 0) + 1
      kinds[own.kind] = (kinds[own.kind] or 0) + 1
    end
  end
  for key, left in pairs(by_key) do
    if #left > 0 then told[#told + 1] = key .. ": the core alone says something of it" end
  end
  return told
end

return agree

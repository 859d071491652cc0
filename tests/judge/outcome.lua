-- From tests to a finding: the second judge's own algebra of outcomes, margins and weight. It shares no line with the core.
-- A test is {relation, what, normative, kind, margin, actual, limit, options, fact}; an option {name, tests, kind}.
local outcome = {}

-- Margins that only rounding tells apart are one. What the core tells has twelve digits, so the last few are not ours.
local function is_less(a, b) return a < b and b - a > 1e-9 * math.max(math.abs(a), math.abs(b), 0.01) end

local function has(tests, kind)
  for _, test in ipairs(tests) do
    if test.kind == kind then return true end
  end
  return false
end

-- What must all hold: one that fails fails it, else what is open leaves it open, else what a person must judge.
function outcome.all_of(tests)
  for _, kind in ipairs({ "fail", "open", "review", "pass" }) do
    if has(tests, kind) then return kind end
  end
end

-- Of several ways one is enough; while one is open nobody can say that none is met.
function outcome.one_of(options)
  for _, kind in ipairs({ "pass", "open", "review", "fail" }) do
    if has(options, kind) then return kind end
  end
end

-- The margin of what decides: the narrowest among tests that came out as the whole did.
function outcome.margin_of(tests)
  local kind, least = outcome.all_of(tests), nil
  if kind ~= "pass" and kind ~= "fail" then return nil end
  for _, test in ipairs(tests) do
    local margin = test.kind == kind and test.margin or nil
    if margin and (not least or is_less(margin, least)) then least = margin end
  end
  return least
end

-- How near a way is to being met: what fails by yes or no misses by the whole.
local function reach_of(option)
  local reach = outcome.margin_of(option.tests)
  for _, test in ipairs(option.kind == "fail" and option.tests or {}) do
    if test.kind == "fail" and not test.margin then reach = reach and is_less(reach, -1) and reach or -1 end
  end
  return reach
end

-- The way that stands for the group: of those that decide the widest margin, the first among equals.
function outcome.best_of(options)
  local kind, best, widest = outcome.one_of(options), nil, nil
  for _, option in ipairs(options) do
    if option.kind == kind then
      local margin = reach_of(option)
      if not best or margin and (not widest or is_less(widest, margin)) then best, widest = option, margin end
    end
  end
  return best
end

function outcome.settle_group(group)
  for _, option in ipairs(group.options) do option.kind = outcome.all_of(option.tests) end
  group.kind = outcome.one_of(group.options)
  group.margin = outcome.margin_of(outcome.best_of(group.options).tests)
end

-- A failing shall is an error; where only a should fails it is a warning.
function outcome.level_of(kind, tests)
  if kind ~= "fail" then return "none" end
  for _, test in ipairs(tests) do
    if test.kind == "fail" and test.normative == "shall" then return "error" end
  end
  return "warning"
end

-- Of what came out as the whole did (a failing shall before a should) the narrowest, the first among equals.
function outcome.deciding(tests)
  local kind, deciding, least = outcome.all_of(tests), nil, nil
  local is_hard = outcome.level_of(kind, tests) == "error"
  for _, test in ipairs(tests) do
    if test.kind == kind and (not is_hard or test.normative == "shall") then
      if not deciding or test.margin and (not least or is_less(test.margin, least)) then deciding, least = test, test.margin end
    end
  end
  return deciding
end

local function is_count(value) return type(value) == "number" and value >= 0 and value % 1 == 0 end

-- How the sentence of a test begins.
local function beginning(test)
  if test.relation == "one_of" then
    local best = outcome.best_of(test.options)
    local inner = beginning(outcome.deciding(best.tests))
    if test.kind == "pass" then return ('"%s" is met: %s'):format(best.name, inner) end
    return ('none of %d ways is met%s "%s": %s'):format(#test.options, test.kind == "fail" and "; nearest," or " yet;", best.name, inner)
  end
  if test.relation == "missing" then return test.fact .. " is not given" end
  if test.relation == "review" or test.relation == "broken" then return test.what end
  if test.relation == "be" then return test.kind == "pass" and test.what or "this must hold, and does not: " .. test.what end
  return test.what .. (is_count(test.actual) and is_count(test.limit) and ": " or " is ")
end

-- How the finding's message must begin, with the first letter large.
function outcome.message_begins(kind, tests)
  local deciding = outcome.deciding(tests)
  local text = (kind == "open" and "Cannot be told: " or "") .. beginning(deciding)
  return (text:gsub("^%l", string.upper))
end

return outcome

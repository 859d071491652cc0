-- What calculators give. The second judge computes no geometry and no loads: it takes each result from the core, which
-- tells it through copies of the rules. In a copy every call of a calculator writes down what it was asked and what it
-- gave, and the rule's own tests are left out; so nothing that the core judged comes along. What was asked and answered
-- before in a finding is not told again: a rule that asks for each module would run past what a finding may hold.
local cjson = require("cjson")
local quantity = require("quantity")
local words = require("words")

local calls = {}

local LETTERS = 390 -- a text in a test may have 400

-- ---- the copies -------------------------------------------------------------------------------------------------------

local no_calculators = {
  is = true, has = true, count = true, called = true, kind_of = true, edition = true, len = true, sub = true, lower = true,
  upper = true, contains = true, numbers_before = true,
}

local head = [[
local __shall = shall
local function __none() end
local __told
local __names = {%s}
local function __show(value)
  local kind = type(value)
  if same(kind, "nil") then return "-" end
  if same(kind, "boolean") then return "b=" .. tostring(value) end
  if same(kind, "number") then return "n=" .. tostring(value) end
  if same(kind, "quantity") then return "q=" .. tostring(value) end
  return "w=" .. tostring(value)
end
local function __pack(...)
  local parts = {}
  for i = 1, select("#", ...) do
    local value = select(i, ...)
    if same(type(value), "table") then
      for _, name in ipairs(__names) do
        if not same(type(value[name]), "nil") then table.insert(parts, name .. ":" .. __show(value[name])) end
      end
    else
      table.insert(parts, __show(value))
    end
  end
  return string.sub(table.concat(parts, "|"), 1, %d)
end
local function __keep(who, given, ...)
  __shall.be_equal("gave " .. who, given, __pack(...))
  __told[who .. "=" .. given] = true
  return ...
end
local function __ask(name, thing, call)
  local who = name .. "|"
  if thing then who = who .. thing:called() end
  return function(...)
    local given = __pack(...)
    if __told[who .. "=" .. given] then return call(...) end
    __shall.be_equal("asked " .. who, given, given)
    return __keep(who, given, call(...))
  end
end
local shall = { not_exceed = __none, be_at_least = __none, be_less_than = __none, be_more_than = __none, be_equal = __none, be = __none }
local should, review = shall, __none
function shall.meet_one_of(ways)
  local told = {}
  for i, way in ipairs(ways) do
    told[i] = { way[1], function()
      __shall.be("way", true)
      way[2]()
    end }
  end
  __shall.meet_one_of(told)
end
local __card = (function()
]]
local foot = [[

end)()
return {
  title = __card.title, cite = __card.cite, about = __card.about, remedy = __card.remedy,
  check = function(thing, book, design)
    __told = {}
    if not __card.applies or __card.applies(thing, book, design) then __card.check(thing, book, design) end
    __shall.be("end", true)
  end,
}
]]

-- A rule's text in which each call of a calculator is asked by way of __ask.
function calls.instrument(text)
  local names, seen = {}, {}
  for name in text:gmatch("([%a_][%w_]*)%s*=[^=]") do
    if not seen[name] then
      seen[name] = true
      names[#names + 1] = ("%q"):format(name)
    end
  end
  table.sort(names)
  local asked = text:gsub("([%a_][%w_.]*):([%l_]+)(%s?[({])", function(thing, name, opening)
    if no_calculators[name] then return nil end
    return ("__ask(%q, %s, function(...) return %s:%s(...) end)%s"):format(name, thing, thing, name, opening)
  end):gsub("calc%.([%l_%d]+)", function(name) return ("__ask(%q, nil, calc.%s)"):format(name, name) end)
  return head:format(table.concat(names, ", "), LETTERS) .. asked .. foot
end

-- ---- what they told ---------------------------------------------------------------------------------------------------

local function value_of(text, dimension)
  local kind, rest = text:match("^([bnqw])=(.*)$")
  if kind == "b" then return rest == "yes" end
  if kind == "n" then return tonumber(rest) end
  if kind == "q" then
    local number, unit = rest:match("^([-+%d.e]+) (%D.*)$")
    local is_point = dimension == quantity.point -- a temperature and a difference are written alike
    local value = number and not is_point and quantity.known(unit, tonumber(number))
    if is_point then return quantity.of(quantity.from(tonumber(number), unit, dimension), dimension) end
    if not value and number and quantity.spelled(unit) then value = quantity.of(tonumber(number), quantity.spelled(unit)) end
    return value or calls.written(rest)
  end
  return kind == "w" and rest or nil
end

-- As somebody wrote it in a design: "5/12", "1 ft 6 in". The first dimension that can read it.
function calls.written(text)
  for _, name in ipairs({ "length", "angle", "time", "force" }) do
    local number = quantity.read(text, quantity.dimension(name))
    if number then return quantity.of(number, quantity.dimension(name)) end
  end
  error("no amount: " .. text, 0)
end

local function split(text)
  local parts = {}
  for part in (text .. "|"):gmatch("(.-)|") do parts[#parts + 1] = part end
  if text == "" then parts = {} end
  return parts
end

-- "asked"/"gave" of one finding as {[who] = {{given, gave = {…}} or {given, signal = …} …}}.
local function collect(told, tests)
  local last
  for _, test in ipairs(tests) do
    local verb, who = test.what:match("^(%l+) (.*)$")
    if test.relation == "equal" and verb == "asked" then
      last = { given = test.actual.value }
      told[who] = told[who] or {}
      table.insert(told[who], last)
    elseif test.relation == "equal" and verb == "gave" then
      local told_of = told[who]
      told_of[#told_of].gave, last = split(test.limit.value), nil
    elseif test.relation == "missing" and last then
      last.signal = { relation = "missing", fact = test.what }
    elseif test.relation == "review" and last then
      last.signal = { relation = "review", what = test.what }
    elseif test.relation == "broken" then
      told.broken = test.what
    end
    for _, option in ipairs(test.options ~= cjson.null and test.options or {}) do collect(told, option.tests) end
  end
end

-- From the report on the copies: {["rule|kind:name"] = what was told}.
function calls.told(report)
  local all = {}
  for _, finding in ipairs(report.findings) do
    local told = {}
    collect(told, finding.tests)
    all[finding.rule .. "|" .. finding.about.kind .. ":" .. finding.about.name] = told
  end
  return all
end

-- ---- asking -------------------------------------------------------------------------------------------------------------

local function is_near(value, text)
  local kind = words.tag(value)
  if text == "-" or kind == "nil" then return text == "-" and kind == "nil" end
  local told = value_of(text, kind == "quantity" and value.dimension)
  if kind == "word" then return told == value.word end
  if words.tag(told) ~= kind then return false end
  if kind == "number" then return math.abs(value - told) <= 1e-9 * math.max(math.abs(value), math.abs(told)) end
  if kind == "quantity" then
    return value.dimension == told.dimension and math.abs(value.number - told.number) <= 1e-9 * math.max(math.abs(value.number), math.abs(told.number))
  end
  return value == told
end

local function is_asked(given, inputs)
  local parts, is_cut = split(given), #given >= LETTERS
  if is_cut then parts[#parts] = nil end
  if inputs.n == 1 and type(inputs[1]) == "table" and words.tag(inputs[1]) == "table" then
    local named = 0
    for _, part in ipairs(parts) do
      local name, text = part:match("^([%a_][%w_]*):(.*)$")
      if not name or not is_near(inputs[1][name], text) then return false end
      named = named + 1
    end
    local count = 0
    for _ in pairs(inputs[1]) do count = count + 1 end
    return is_cut or count == named
  end
  if #parts ~= inputs.n then return false end
  for i, part in ipairs(parts) do
    if not is_near(inputs[i], part) then return false end
  end
  return true
end

-- The function by which a room asks calculators, for one finding.
function calls.asking(told, counts)
  return function(name, thing, ...)
    local inputs = table.pack(...)
    local who = name .. "|" .. (thing and thing.path or "")
    for _, call in ipairs(told and told[who] or {}) do
      if is_asked(call.given, inputs) then
        counts.calls = counts.calls + 1
        if call.signal then error(call.signal, 0) end
        if not call.gave then error(told.broken or "no result", 0) end
        local results = {}
        for i, part in ipairs(call.gave) do results[i] = value_of(part) end
        return table.unpack(results, 1, #call.gave)
      end
    end
    local shown = {}
    for i = 1, inputs.n do shown[i] = words.shown(inputs[i]) end
    error({ unasked = ("%s(%s) was not asked by the core"):format(who, table.concat(shown, ", ")) }, 0)
  end
end

return calls

-- What a rule can say, as the second judge understands it: things, lists, words and books as plain tables, shall and
-- should that write down tests, and the few plain functions. What a calculator gives comes from `calls`.
local quantity = require("quantity")
local outcome = require("outcome")
local design = require("design")

local words = {}

-- What leaves a rule for a reason that is no mistake.
local function leave(signal) error(signal, 0) end
local function missing(fact) leave({ relation = "missing", fact = fact }) end
local function wrong(text, ...) error(text:format(...), 0) end

-- ---- things, lists, words, dates ------------------------------------------------------------------------------------

local thing_meta, list_meta, word_meta, set_meta, date_meta = {}, {}, {}, {}, {}

local function tag(value)
  local meta = getmetatable(value)
  return meta == thing_meta and "thing" or meta == list_meta and "list" or meta == word_meta and "word" or meta == set_meta and "list of words"
    or meta == date_meta and "date" or quantity.is(value) and "quantity" or type(value)
end
words.tag = tag

function words.word(word, of_words) return setmetatable({ word = word, words = of_words }, word_meta) end
local function list_of(things, room) return setmetatable({ things = things, room = room }, list_meta) end
function words.thing(thing, room) return setmetatable({ thing = thing, room = room }, thing_meta) end

local function check_word(word, of_words)
  for _, known in ipairs(of_words) do
    if known == word then return end
  end
  wrong("'%s' is no such word", word)
end

word_meta.__index = {
  is = function(self, ...)
    local is_any = false
    for _, word in ipairs({ ... }) do
      check_word(word, self.words)
      is_any = is_any or word == self.word
    end
    return is_any
  end,
}
set_meta.__index = {
  has = function(self, ...)
    local has_all = true
    for _, word in ipairs({ ... }) do
      local has = false
      if self.words then check_word(word, self.words) end
      for _, one in ipairs(self.set) do has = has or one == word end
      has_all = has_all and has
    end
    return has_all
  end,
  count = function(self) return #self.set end,
}
set_meta.__len = function(self) return #self.set end
local function count(self) return #rawget(self, "things") end
list_meta.__len = count
list_meta.__index = function(self, key)
  if key == "count" then return count end
  local thing = math.type(key) and rawget(self, "things")[key]
  if not thing and type(key) ~= "number" then wrong("a list has no %s", key) end
  return thing and words.thing(thing, rawget(self, "room")) or nil
end
date_meta.__lt = function(a, b) return a.date < b.date end
date_meta.__le = function(a, b) return a.date <= b.date end

local plain_methods = {
  called = function(self) return rawget(self, "thing").path end,
  kind_of = function(self) return rawget(self, "thing").kind.name end,
}

local function read_fact(self, thing, row)
  local fact, room = thing.facts[row.name], rawget(self, "room")
  if fact.state == "missing" then missing(design.name_fact(thing, row)) end
  if row.type == "ONE" or row.type == "REFERENCE" then return fact.state == "given" and words.thing(fact.is, room) or nil end
  if row.type == "LIST" or row.type == "REFERENCES" or row.type == "INVERSE" then return list_of(fact.is or {}, room) end
  if row.type == "WORDS" or row.type == "WORD_LIST" or row.type == "TEXTS" then
    return setmetatable({ set = fact.is or {}, words = row.vocabulary and room.model.words[row.vocabulary] }, set_meta)
  end
  if row.type == "CHOICE" then return words.word(fact.is, room.model.words[row.vocabulary]) end
  if row.type == "DATE" then return setmetatable(fact.is, date_meta) end
  if row.type == "POINT" or row.type == "POINTS" then wrong("%s is geometry", row.name) end
  return fact.is
end

thing_meta.__index = function(self, name)
  local thing, room = rawget(self, "thing"), rawget(self, "room")
  local row = thing.kind.rows[name]
  if row then return read_fact(self, thing, row) end
  if plain_methods[name] then return plain_methods[name] end
  return function(of, ...)
    if tag(of) ~= "thing" then wrong("%s is asked of a thing", name) end
    return room.calls(name, rawget(of, "thing"), ...)
  end
end

-- ---- plain words ------------------------------------------------------------------------------------------------------

-- \1 stands for an amount with its unit or a broken number, whose digits are the report's affair.
local function shown(value)
  local kind = tag(value)
  if kind == "string" then return value end
  if kind == "number" then return value == value // 1 and ("%.12g"):format(value) or "\1" end
  if kind == "boolean" then return value and "yes" or "no" end
  if kind == "word" then return value.word end
  if kind == "thing" then return rawget(value, "thing").path end
  if kind == "nil" then return "nil" end
  return "\1"
end
words.shown = shown

local function is_number(value) return math.type(value) ~= nil end

local function same(a, b)
  local kind, other = tag(a), tag(b)
  if kind == "thing" and other == "thing" then return rawget(a, "thing") == rawget(b, "thing") end
  if kind == "word" then a, kind = a.word, "string" end
  if other == "word" then b, other = b.word, "string" end
  if kind ~= other or kind ~= "string" and kind ~= "boolean" and kind ~= "number" and kind ~= "quantity" and kind ~= "date" then
    wrong("a %s and a %s are never the same", kind, other)
  end
  if kind == "number" or kind == "quantity" then return quantity.order(a, b) == 0 end
  if kind == "date" then return a.date == b.date end
  return a == b
end

-- As `<` has it: numbers by size, amounts by the house's comparison, texts by their bytes.
local function less(a, b)
  if type(a) == type(b) and (is_number(a) or type(a) == "string") then return a < b end
  if tag(a) == "date" and tag(b) == "date" then return a.date < b.date end
  if tag(a) == "quantity" and tag(b) == "quantity" then return a < b end
  wrong("a %s and a %s have no order", tag(a), tag(b))
end

local function extreme(is_better)
  return function(first, ...)
    local best = first
    for i = 1, select("#", ...) do
      local other = select(i, ...)
      if is_better(other, best) then best = other end
    end
    return best
  end
end
local largest = extreme(function(a, b) return less(b, a) end)
local smallest = extreme(less)

local function numeric(f) return function(number) return quantity.finite(f(quantity.finite(number)) + 0.0) end end
local function of_angle(f)
  return function(angle)
    if tag(angle) ~= "quantity" or angle.dimension ~= quantity.dimension("angle") then wrong("an angle is needed") end
    return f(angle.number)
  end
end

local function absolute(value)
  if not quantity.is(value) then return math.abs(value) end
  if value.dimension == quantity.point then wrong("a temperature has no absolute value") end
  return quantity.of(math.abs(value.number), value.dimension)
end

-- %s, %d, %.2f and %%.
local function formatted(pattern, ...)
  local values, at = { ... }, 0
  return (pattern:gsub("%%(%.?%d?)(.)", function(digits, letter)
    if letter == "%" then return "%" end
    at = at + 1
    if letter == "s" then return shown(values[at]) end
    local places = letter == "d" and 0 or tonumber(digits == "" and "2" or digits:sub(2))
    -- Half way between two last digits the last bit decides, which is the core's affair.
    local scaled = math.abs(values[at]) * 10 ^ places
    if math.abs(scaled % 1 - 0.5) <= 1e-9 * (scaled + 1) then return "\1" end
    return ("%." .. places .. "f"):format(values[at])
  end))
end

local function sorted(list, before)
  before = before or less
  for i = 2, #list do -- by insertion: equals keep their order
    local moved, at = list[i], i
    while at > 1 and before(moved, list[at - 1]) do
      list[at], at = list[at - 1], at - 1
    end
    list[at] = moved
  end
end

local function type_name(value)
  local kind = tag(value)
  return kind == "thing" and rawget(value, "thing").kind.name or kind
end

local function number_of(value)
  if is_number(value) then return value + 0.0 end
  if type(value) ~= "string" then wrong("tonumber() takes a text") end
  return value:match("^%-?%d[%d.eE+-]*$") and tonumber(value) and tonumber(value) + 0.0 or nil
end

local text_words = {
  len = string.len, sub = string.sub,
  lower = function(text) return (text:gsub("%u", function(letter) return letter:lower() end)) end,
  upper = function(text) return (text:gsub("%l", function(letter) return letter:upper() end)) end,
  contains = function(text, piece) return text:find(piece, 1, true) ~= nil end,
  numbers_before = function(text, ...)
    local least, most
    for at = 2, #text do
      local digits = text:sub(1, at - 1):match("[%d.]*%d$")
      local number = digits and tonumber((digits:gsub("^%.+", "")))
      local from = text:sub(at, at) == " " and at + 1 or at
      for _, unit in ipairs { ... } do
        local to = from + #unit - 1
        if number and text:sub(from, to) == unit and not text:sub(to + 1, to + 1):find("%a") then
          least, most = math.min(least or number, number), math.max(most or number, number)
        end
      end
    end
    return least, most
  end,
}

-- ---- shall, should, review ----------------------------------------------------------------------------------------------

local function amount(value, role)
  local kind = tag(value)
  if kind == "word" then return value.word end
  if kind == "string" or kind == "boolean" or kind == "quantity" or kind == "date" then return value end
  if kind == "number" then return quantity.finite(value) + 0.0 end
  wrong("%s cannot be a %s", role, kind)
end

local holds = {
  not_exceed = function(order) return order <= 0 end, be_at_least = function(order) return order >= 0 end,
  be_less_than = function(order) return order < 0 end, be_more_than = function(order) return order > 0 end,
  be_equal = function(order) return order == 0 end,
}
-- As reports call them.
local relations = { not_exceed = "not_exceed", be_at_least = "at_least", be_less_than = "less_than", be_more_than = "more_than", be_equal = "equal" }

local function order_of(word, actual, limit)
  local kind = tag(actual)
  if kind ~= tag(limit) then wrong("a %s cannot be compared with a %s", kind, tag(limit)) end
  if kind == "number" or kind == "quantity" then return quantity.order(actual, limit) end
  if kind == "date" then return actual.date < limit.date and -1 or actual.date > limit.date and 1 or 0 end
  if word ~= "be_equal" then wrong("words have no larger and smaller") end
  return actual == limit and 0 or 1
end

-- How far inside the limit, as a share of it; nil where such a share means nothing.
local function margin_of(word, actual, limit, order)
  local dimension = quantity.none
  if quantity.is(limit) then
    dimension, actual, limit = limit.dimension, actual.number, limit.number
  elseif not is_number(limit) then
    return nil
  end
  if limit == 0 or dimension == quantity.point or word == "be_equal" and order == 0 then return nil end
  if order == 0 then return 0 end
  local outside = actual - limit
  if word == "be_equal" then return -math.abs(outside) / math.abs(limit) end
  local is_above = word == "be_at_least" or word == "be_more_than"
  return (is_above and outside or -outside) / math.abs(limit)
end

local function record(room, test)
  if not room.tests then wrong("tests are said in check()") end
  table.insert(room.tests, test)
end

local function compare(room, normative, word)
  return function(what, actual, limit)
    if not room.tests then wrong("tests are said in check()") end
    if normative == "should" and room.depth > 0 then wrong("'should' does not stand inside meet_one_of") end
    if type(what) ~= "string" then wrong("what is compared is a text") end
    actual = amount(actual, "the actual amount")
    if word == "be" then
      if type(actual) ~= "boolean" then wrong("be() asks for yes or no") end
      record(room, { relation = "be", what = what, normative = normative, kind = actual and "pass" or "fail", actual = actual, limit = true })
      return
    end
    limit = amount(limit, "the limit")
    local order = order_of(word, actual, limit)
    record(room, {
      relation = relations[word], what = what, normative = normative, kind = holds[word](order) and "pass" or "fail",
      actual = actual, limit = limit, margin = margin_of(word, actual, limit, order),
    })
  end
end

local function review(room)
  return function(why, ...)
    local values = {}
    for i = 1, select("#", ...) do values[i] = shown((select(i, ...))) end
    local what = #values > 0 and why .. ": " .. table.concat(values, ", ") or why
    record(room, { relation = "review", what = what, normative = "shall", kind = "review" })
  end
end

-- A test that says why a function was left.
local function note_of(signal)
  return { relation = signal.relation, what = signal.what, fact = signal.fact, normative = "shall", kind = signal.relation == "missing" and "open" or "review" }
end
words.note_of = note_of

local function meet_one_of(room)
  return function(ways)
    if not room.tests then wrong("tests are said in check()") end
    if #ways < 2 then wrong("meet_one_of takes two or more options") end
    local above, options = room.tests, {}
    for i, way in ipairs(ways) do
      room.tests, room.depth = {}, room.depth + 1
      options[i] = { name = way[1], tests = room.tests }
      local is_done, signal = pcall(way[2])
      if not is_done and type(signal) == "table" then record(room, note_of(signal)) end
      room.tests, room.depth = above, room.depth - 1
      if not is_done and type(signal) ~= "table" then error(signal, 0) end
      if #options[i].tests == 0 then wrong("the option '%s' recorded nothing", way[1]) end
    end
    local group = { relation = "one_of", what = "One of the options", normative = "shall", options = options }
    outcome.settle_group(group)
    record(room, group)
  end
end

-- ---- the book ---------------------------------------------------------------------------------------------------------

local function value_here(room, name)
  local value = room.books.values[name]
  if not room.books.says[name] then wrong("no book declares %s", name) end
  if value and value.bands then
    local site = room.design.root.facts.site
    if site.state ~= "given" then missing("site") end
    local elevation = site.is.facts.elevation
    if elevation.state ~= "given" then missing("site: elevation") end
    for _, band in ipairs(value.bands) do
      if elevation.is <= band.up_to then return band.is end
    end
    value = nil
  end
  if not value then missing(("a value in force for %s (%s)"):format(name, room.books.says[name])) end
  return value.is
end

local function book_of(room)
  return setmetatable({}, { __index = function(_, name)
    if name == "edition" then
      return function(_, code)
        for _, book in ipairs(room.books.stack) do
          if book.name == code then return book.edition or wrong("%s has no editions", code) end
        end
        missing("an edition of " .. code .. " in force")
      end
    end
    local is = value_here(room, name)
    if tag(is) == "table" then return words.word(is.word, is.words) end
    return is
  end })
end
words.book_of = book_of

-- ---- all of it ----------------------------------------------------------------------------------------------------------

local relation_words = { "not_exceed", "be_at_least", "be_less_than", "be_more_than", "be_equal", "be" }

-- The words of a room, in which `room.calls(name, thing, …)` is what a calculator gives. Each use is counted in `used`.
function words.environment(room, used)
  local shall, should, calc = { meet_one_of = meet_one_of(room) }, {}, {}
  for _, word in ipairs(relation_words) do
    shall[word], should[word] = compare(room, "shall", word), compare(room, "should", word)
  end
  setmetatable(calc, { __index = function(_, name) return function(...) return room.calls(name, nil, ...) end end })
  local all = {
    shall = shall, should = should, calc = calc, review = review(room), same = same, type = type_name, tostring = shown, tonumber = number_of,
    format = formatted, abs = absolute, sqrt = quantity.root, sin = of_angle(math.sin), cos = of_angle(math.cos), tan = of_angle(math.tan),
    smallest = smallest, largest = largest, round_down = numeric(math.floor), round_up = numeric(math.ceil), ipairs = ipairs, select = select,
    celsius = function(number) return quantity.of(number + 273.15, quantity.point) end,
    fahrenheit = function(number) return quantity.of((number + 459.67) * 5 / 9, quantity.point) end,
    math = {
      floor = numeric(math.floor), ceil = numeric(math.ceil), abs = absolute, sqrt = quantity.root, min = smallest, max = largest,
      log10 = numeric(function(number) return math.log(number, 10) end), exp = numeric(math.exp), pi = math.pi,
    },
    string = text_words,
    table = {
      insert = function(list, value) list[#list + 1] = value end,
      remove = function(list)
        local last = list[#list]
        list[#list] = nil
        return last
      end,
      concat = table.concat, sort = sorted,
    },
  }
  for name, unit in pairs(quantity.words) do all[name] = unit end
  local counted = {}
  for name, value in pairs(all) do
    local is_library = type(value) == "table" and not quantity.is(value) and name ~= "calc"
    counted[name] = not is_library and value or setmetatable({}, { __index = function(_, word)
      used[name .. "." .. word] = (used[name .. "." .. word] or 0) + 1
      return value[word] or wrong("%s has no %s", name, word)
    end })
    for word in pairs(is_library and value or { [""] = true }) do
      local whole = is_library and name .. "." .. word or name
      used[whole] = used[whole] or 0
    end
  end
  return setmetatable({}, { __index = function(_, name)
    if counted[name] == nil then wrong("a rule has no word %s", name) end
    used[name] = (used[name] or 0) + 1
    return counted[name]
  end })
end

return words

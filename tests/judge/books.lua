-- Which books, editions, values and rules hold on a day: the second judge's own reading of rules/.
-- It knows what the town stacks of rules/ use: adoption by date, values by date and edition, bands of elevation,
-- repeals, a company that may only tighten.
local quantity = require("quantity")
local tree = require("tree")

local books = {}

-- The folder of each book below rules/ and other folders: {name = folder}.
function books.find(folders)
  local found = {}
  for _, folder in ipairs(folders) do
    local pipe = assert(io.popen("ls -d " .. folder .. "/*/*/book.yaml " .. folder .. "/*/book.yaml 2>/dev/null"))
    for path in pipe:lines() do
      local at = path:match("^(.*)/book%.yaml$")
      local pipe_of_rules = assert(io.popen("ls " .. at))
      local rules = {}
      for name in pipe_of_rules:lines() do
        if name:match("%.lua$") then rules[#rules + 1] = name:sub(1, -5) end
      end
      pipe_of_rules:close()
      found[tree.text(tree.read(path, true), "book")] = { at = at, rules = rules }
    end
    pipe:close()
  end
  return found
end

-- The stack from the bottom: codes that the named books adopt on the day, then those books, each above the one before.
local function stack_of(found, names, on)
  local stack, seen = {}, {}
  for _, name in ipairs(names) do
    local node = tree.read(found[name].at .. "/book.yaml", true)
    local best = {}
    for _, entry in ipairs(node.of.adopts and node.of.adopts.items or {}) do
      local from, code = tree.text(entry, "from"), tree.text(entry, "book")
      if from <= on and (not best[code] or from >= best[code].from) then
        best[code] = { from = from, edition = tree.text(entry, "edition") }
      end
    end
    for code, entry in pairs(best) do
      if not seen[code] then
        table.insert(stack, 1, { name = code, edition = entry.edition, node = tree.read(found[code].at .. "/book.yaml", true) })
        seen[code] = true
      end
    end
    stack[#stack + 1] = { name = name, node = node }
  end
  for _, book in ipairs(stack) do
    book.at, book.rules = found[book.name].at, found[book.name].rules
    book.values = tree.read(book.at .. "/values.yaml", true)
  end
  return stack
end

local function amount_of(declared, text)
  local kind = tree.text(declared, "kind")
  if kind == "yes or no" then return text == "yes" end
  if kind == "word" then
    local words = {}
    for i, item in ipairs(declared.of.words.items) do words[i] = item.text end
    return { word = text, words = words }
  end
  local dimension = kind == "number" and quantity.none or assert(quantity.dimension(kind), kind)
  return quantity.of(assert(quantity.read(text, dimension), text) + 0.0, dimension)
end

local function entry_of(declared, node)
  local entry = { from = tree.text(node, "from") or "", repealed = tree.text(node, "repealed"), edition = tree.text(node, "edition") }
  if node.of.bands then
    entry.bands = {}
    for i, band in ipairs(node.of.bands.items) do
      local length = quantity.dimension("length")
      entry.bands[i] = { up_to = quantity.of(quantity.read(tree.text(band, "up_to"), length), length), is = amount_of(declared, tree.text(band, "is")) }
    end
  elseif node.of.is then
    entry.is = amount_of(declared, tree.text(node, "is"))
  end
  return entry
end

-- Of a list of entries the one in force on the day.
local function in_force(declared, nodes, on, edition)
  local best
  for _, node in ipairs(nodes or {}) do
    local entry = entry_of(declared, node)
    local fits = not (edition and entry.edition) or entry.edition == edition
    if fits and entry.from <= on and (not best or entry.from >= best.from) then best = entry end
  end
  if best and (best.repealed and best.repealed <= on or best.is == nil and not best.bands) then return nil end
  return best
end

local function declared_entry(declared, edition, on)
  local editions = declared.of.editions
  if editions then
    local node = editions.of[edition]
    return node and (node.items and in_force(declared, node.items, on) or node.of and entry_of(declared, node)) or nil
  end
  return in_force(declared, declared.of.entries and declared.of.entries.items, on, edition)
end

local function is_looser(declared, company, below)
  local stricter = tree.text(declared, "stricter")
  if below.is == nil or company.is == nil then return false end
  local order = quantity.order(company.is, below.is)
  return stricter == "larger" and order < 0 or stricter == "smaller" and order > 0
end

-- {stack = …, values = {name = {is = …} or {bands = …}}, says = {name = sentence}}
function books.resolve(found, names, on)
  local stack = stack_of(found, names, on)
  local declared, values, says = {}, {}, {}
  for _, book in ipairs(stack) do
    local own = book.node.of.values
    for _, list in ipairs({ book.values or false, own or false }) do
      for _, name in ipairs(list and list.keys or {}) do
        if list.of[name].of then
          declared[name] = list.of[name]
          values[name] = declared_entry(list.of[name], book.edition, on)
          says[name] = tree.text(list.of[name], "says") or ""
        end
      end
    end
  end
  for _, book in ipairs(stack) do
    local own = book.node.of.values
    for _, name in ipairs(own and own.keys or {}) do
      local node = own.of[name]
      if node.items and declared[name] then
        local entry = in_force(declared[name], node.items, on)
        local is_loose = entry and values[name] and tree.text(book.node, "role") == "company" and is_looser(declared[name], entry, values[name])
        if entry and not is_loose then values[name] = entry end
      end
    end
  end
  return { stack = stack, values = values, says = says }
end

return books

-- A design as the second judge knows it: things with facts, references followed, rows made into what they stand for,
-- and of what is not told the name of the fact that would tell it.
-- A fact is {state = "given" | "missing" | "none", is = …, assumed = true, unsure = {thing, row}}.
local quantity = require("quantity")
local tree = require("tree")

local design = {}

local function new_thing(made, kind_name, parent, name)
  local kind = made.model.kinds[kind_name]
  local thing = { kind = kind, name = name or kind.name, parent = parent, facts = {} }
  local above = (name or kind.count == "ONLY") and parent or nil
  while above and above.kind.count ~= "NAMED" and above.kind.count ~= "MODEL" do above = above.parent end
  thing.path = above and above.path .. "/" .. thing.name or thing.name
  for _, row in ipairs(kind.rows) do thing.facts[row.name] = { state = "missing" } end
  made.all[kind.name] = made.all[kind.name] or {}
  table.insert(made.all[kind.name], thing)
  return thing
end

local function is_blank(node) return node.text == "" and node.plain end
local function is_none(node) return node.text == "none" and node.plain or node.items and #node.items == 0 end

local function date_of(text)
  local year, month, day = text:match("^(%d%d%d%d)-(%d%d)-(%d%d)$")
  return { date = year * 10000 + month * 100 + day }
end

local function scalar(row, text)
  if row.type == "QUANTITY" then
    local dimension = quantity.dimension(row.measure)
    local number = assert(quantity.read(text, dimension), row.name .. ": " .. text)
    return quantity.of(number, dimension)
  elseif row.type == "NUMBER" then return assert(quantity.read(text, quantity.none), row.name .. ": " .. text) + 0.0
  elseif row.type == "COUNT" then return assert(tonumber(text)) + 0.0
  elseif row.type == "YESNO" then return text == "yes" or text == "true"
  elseif row.type == "DATE" then return date_of(text) end
  return text
end

local read_thing

local function read_list(made, thing, row, node)
  local fact = thing.facts[row.name]
  if is_blank(node) then return end
  if is_none(node) then
    if fact.state == "missing" then fact.state, fact.is = "none", {} end
    return
  end
  fact.state, fact.is = "given", fact.is or {}
  for _, item in ipairs(node.items) do
    local inner = new_thing(made, row.kind, thing, tree.text(item, "name"))
    table.insert(fact.is, inner)
    read_thing(made, inner, item)
  end
end

local function read_fact(made, thing, row, node)
  local fact = thing.facts[row.name]
  if row.type ~= "ONE" and row.type ~= "LIST" and node.of then node = node.of.is end
  if row.type == "LIST" then return read_list(made, thing, row, node) end
  if is_blank(node) then return end
  if row.type == "ONE" then
    if is_none(node) then
      fact.state = "none"
    else
      fact.state, fact.is = "given", new_thing(made, row.kind, thing)
      read_thing(made, fact.is, node)
    end
    return
  end
  local takes_none = row.type == "WORDS" or row.type == "TEXTS" or row.type == "REFERENCE" or row.type == "REFERENCES"
  if takes_none and is_none(node) then
    fact.state, fact.is = "none", row.type ~= "REFERENCE" and {} or nil
  elseif row.type == "REFERENCE" or row.type == "REFERENCES" then
    table.insert(made.waiting, { thing = thing, row = row, node = node })
  elseif row.type == "WORDS" or row.type == "WORD_LIST" or row.type == "TEXTS" then
    fact.state, fact.is = "given", {}
    for i, item in ipairs(node.items) do fact.is[i] = item.text end
  elseif row.type == "POINT" or row.type == "POINTS" then
    fact.state = "given"
  else
    fact.state, fact.is = "given", scalar(row, node.text)
  end
end

function read_thing(made, thing, node)
  for _, key in ipairs(node.keys) do
    local row = thing.kind.rows[key]
    if row then read_fact(made, thing, row, node.of[key]) end
  end
end

local function find_named(made, kinds, name)
  local found
  for _, kind in ipairs(made.model.kinds) do
    for _, thing in ipairs(kinds[kind.name] and made.all[kind.name] or {}) do
      if thing.path == name then return thing end
      if thing.name == name then found = found or thing end
    end
  end
  return assert(found, "nothing is called " .. name)
end

local function follow(made, of_rows)
  for _, waiting in ipairs(made.waiting) do
    local kind = waiting.thing.kind.name
    if (kind == "module_row" or kind == "attachment_row") == of_rows then
      local row, fact = waiting.row, waiting.thing.facts[waiting.row.name]
      if row.type == "REFERENCE" then
        fact.state, fact.is = "given", find_named(made, row.kinds, waiting.node.text)
      else
        fact.state, fact.is = "given", {}
        for _, item in ipairs(waiting.node.items or { waiting.node }) do
          local thing = find_named(made, row.kinds, item.text)
          if thing.kind.name ~= "module_row" then
            table.insert(fact.is, thing)
          elseif not made.of_row[thing] then
            fact.state = "missing"
          else
            for _, module in ipairs(made.of_row[thing]) do table.insert(fact.is, module) end
          end
        end
        if fact.state == "missing" then fact.is = nil end
      end
    end
  end
end

local handed_down = { "model", "plane", "orientation", "status", "rail", "stands_on" }

local function make_rows(made, holder, rows_name, list_name, kind, count_name, names_of)
  local vague
  local list, rows = holder.facts[list_name], holder.facts[rows_name]
  for _, row in ipairs(rows.is or {}) do
    if row.facts[count_name].state == "missing" then
      vague = row
    else
      made.of_row[row] = {}
      for _, name in ipairs(names_of(row)) do
        local thing = new_thing(made, kind, holder, name)
        for _, fact in ipairs(handed_down) do
          if thing.facts[fact] and row.facts[fact] then
            thing.facts[fact] = { state = row.facts[fact].state, is = row.facts[fact].is }
          end
        end
        list.is = list.is or {}
        table.insert(list.is, thing)
        table.insert(made.of_row[row], thing)
      end
    end
  end
  if vague then
    list.state, list.is, list.unsure = "missing", nil, { thing = vague, row = vague.kind.rows[count_name] }
  elseif list.is and #list.is > 0 then
    list.state = "given"
  elseif rows.state == "none" and list.state == "missing" then
    list.state, list.is = "none", {}
  end
end

local function module_names(row)
  local names = {}
  for r = 1, math.tointeger(row.facts.rows.is or 1) do
    for c = 1, math.tointeger(row.facts.columns.is) do names[#names + 1] = ("%s-%d-%d"):format(row.name, r, c) end
  end
  return names
end

local function attachment_names(row)
  local names = {}
  for n = 1, math.tointeger(row.facts.count.is) do names[n] = ("%s-%d"):format(row.name, n) end
  return names
end

local function assume(fact, row)
  if row.absent == nil or fact.state ~= "missing" then return end
  fact.assumed = true
  if row.type == "REFERENCE" then
    fact.state = "none"
  else
    fact.state, fact.is = "given", scalar(row, row.absent)
  end
end

-- Where things of a kind may still be untold: a list, or what would hold it, that nobody told.
local function find_untold(made)
  local untold = {}
  for _, kind in ipairs(made.model.kinds) do
    for _, thing in ipairs(made.all[kind.name] or {}) do
      for _, row in ipairs(kind.rows) do
        if (row.type == "LIST" or row.type == "ONE") and thing.facts[row.name].state == "missing" then
          untold[row.kind] = { thing = thing, row = row }
        end
      end
    end
  end
  local is_changed = true
  while is_changed do
    is_changed = false
    for _, kind in ipairs(made.model.kinds) do
      for _, row in ipairs(kind.rows) do
        if (row.type == "LIST" or row.type == "ONE") and untold[kind.name] and not untold[row.kind] then
          untold[row.kind], is_changed = untold[kind.name], true
        end
      end
    end
  end
  return untold
end

-- What looks backwards: told only where nobody can still refer to the thing unseen.
local function settle_inverse(made, kind, row)
  local unsure = made.untold[row.kind]
  for _, other in ipairs(not unsure and made.all[row.kind] or {}) do
    if other.facts[row.via].state == "missing" then
      unsure = { thing = other, row = other.kind.rows[row.via] }
      break
    end
  end
  for _, thing in ipairs(made.all[kind.name] or {}) do
    local fact = thing.facts[row.name]
    if unsure then
      fact.state, fact.unsure = "missing", unsure
    else
      fact.is = {}
      for _, other in ipairs(made.all[row.kind] or {}) do
        local back = other.facts[row.via]
        if back.state == "given" and not back.assumed then
          for _, target in ipairs(back.is.kind and { back.is } or back.is) do
            if target == thing then table.insert(fact.is, other) end
          end
        end
      end
      fact.state = #fact.is > 0 and "given" or "none"
    end
  end
end

-- Reads the file; `catalogues` is the folder sought after the design's own.
function design.read(path, model, catalogues)
  local made = { model = model, all = {}, waiting = {}, of_row = {} }
  local node = tree.read(path)
  local root = new_thing(made, "design")
  made.root = root
  read_thing(made, root, node)
  for _, name in ipairs(root.facts.catalogue.is or {}) do
    local beside = path:match("^(.*/)") or ""
    local book = tree.read(beside .. name .. ".yaml", true) or tree.read(catalogues .. "/" .. name .. ".yaml", true)
    for _, key in ipairs(assert(book, name).keys) do read_list(made, root, root.kind.rows[key], book.of[key]) end
  end
  follow(made, true)
  make_rows(made, root, "module_rows", "modules", "module", "columns", module_names)
  local racking = made.all.racking and made.all.racking[1]
  if racking then make_rows(made, racking, "attachment_rows", "attachments", "attachment", "count", attachment_names) end
  follow(made, false)
  for _, kind in ipairs(model.kinds) do
    for _, thing in ipairs(made.all[kind.name] or {}) do
      for _, row in ipairs(kind.rows) do assume(thing.facts[row.name], row) end
    end
  end
  made.untold = find_untold(made)
  for _, kind in ipairs(model.kinds) do
    for _, row in ipairs(kind.rows) do
      if row.type == "INVERSE" then settle_inverse(made, kind, row) end
    end
  end
  return made
end

-- "busbar main/bus: rating": the fact that is to be given, as reports name it.
function design.name_fact(thing, row)
  local fact = thing.facts[row.name]
  if row.type == "INVERSE" and fact.state == "missing" and fact.unsure then
    return design.name_fact(fact.unsure.thing, fact.unsure.row)
  end
  if thing.kind.count == "ROOT" then return row.name end
  if thing.kind.count == "ONLY" then return thing.path .. ": " .. row.name end
  return thing.kind.name .. " " .. thing.path .. ": " .. row.name
end

return design

-- The one table of kinds and facts, read as the text it is: what a fact is called, of what type, from which words.
local facts = {}

local function lines(path)
  local file = assert(io.open(path, "rb"))
  local list = {}
  for line in file:lines() do list[#list + 1] = line end
  file:close()
  return list
end

-- "a, "b, c", KINDS(d) | KINDS(e)" in its parts; quotes go.
local function parts_of(text)
  local parts, part, quoted, was_quoted = {}, "", false, false
  for letter in (text .. ","):gmatch(".") do
    if letter == '"' then
      quoted, was_quoted = not quoted, true
    elseif letter == "," and not quoted then
      parts[#parts + 1] = was_quoted and part or part:match("^%s*(.-)%s*$")
      part, was_quoted = "", false
    elseif not (was_quoted and not quoted) and (quoted or letter ~= " " or part ~= "") then
      part = part .. letter
    end
  end
  return parts
end

local function read_row(word, parts)
  local row = { name = parts[1], type = word }
  if word == "QUANTITY" then row.measure = parts[2]
  elseif word == "CHOICE" or word == "WORDS" or word == "WORD_LIST" then row.vocabulary = parts[2]
  elseif word == "ONE" or word == "LIST" then row.kind = parts[2]
  elseif word == "INVERSE" then row.kind, row.via = parts[2], parts[3]
  elseif word == "REFERENCE" or word == "REFERENCES" then
    row.kinds = {}
    for kind in parts[2]:gmatch("KINDS%(([%w_]+)%)") do row.kinds[kind] = true end
  end
  return row
end

-- kinds: in order and by name, each with `count`, `rows` in order and by name; words: by vocabulary.
function facts.read(top)
  local folder = top .. "/core/design/facts/"
  local model = { kinds = {}, words = {} }
  for _, line in ipairs(lines(folder .. "words.facts")) do
    local inside = line:match("^VOCABULARY%((.*)%)")
    local parts = inside and parts_of(inside)
    if parts then model.words[table.remove(parts, 1)] = parts end
  end
  for _, line in ipairs(lines(folder .. "kinds.facts")) do
    local name, count = line:match("^KIND%(([%w_]+), (%u+),")
    if name then
      local kind = { name = name, count = count, rows = {} }
      for _, row_line in ipairs(lines(folder .. name .. ".facts")) do
        local word, inside = row_line:match("^(%u[%u_]*)%((.*)%)%s*$")
        if word == "ABSENT_MEANS" then
          local parts = parts_of(inside)
          kind.rows[parts[1]].absent = parts[2]
        elseif word and word ~= "EXAMPLE" then
          local row = read_row(word, parts_of(inside))
          kind.rows[#kind.rows + 1] = row
          kind.rows[row.name] = row
        end
      end
      model.kinds[#model.kinds + 1] = kind
      model.kinds[name] = kind
    end
  end
  return model
end

return facts

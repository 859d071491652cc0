-- A YAML file as plain tables: {text = …, plain = …} for a scalar, {items = {…}} for a list, {keys = {…}, …} for a map.
-- lyaml's events are used, not its reading of types: what 4/12 or 7-16 is, is for the judge to say.
local yaml = require("yaml")

local tree = {}

local function node_of(event, next_event)
  if event.type == "SCALAR" then return { text = event.value, plain = event.style == "PLAIN" } end
  if event.type == "SEQUENCE_START" then
    local node = { items = {} }
    for inner in next_event do
      if inner.type == "SEQUENCE_END" then return node end
      node.items[#node.items + 1] = node_of(inner, next_event)
    end
  end
  assert(event.type == "MAPPING_START", event.type)
  local node = { keys = {}, of = {} }
  for key in next_event do
    if key.type == "MAPPING_END" then return node end
    node.keys[#node.keys + 1] = key.value
    node.of[key.value] = node_of(next_event(), next_event)
  end
end

function tree.parse(text)
  local next_event = yaml.parser(text)
  for event in next_event do
    if event.type ~= "STREAM_START" and event.type ~= "DOCUMENT_START" then return node_of(event, next_event) end
  end
end

local kept = {}
-- Files that many designs share are read once: rulebooks and catalogues.
function tree.read(path, is_shared)
  if kept[path] then return kept[path] end
  local file = io.open(path, "rb")
  if not file then return nil end
  local node = tree.parse(file:read("a"))
  file:close()
  if is_shared then kept[path] = node end
  return node
end

function tree.text(node, key)
  local inner = node and node.of and node.of[key]
  return inner and inner.text
end

return tree

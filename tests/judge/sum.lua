-- Adds up what the shares of a run told; ends with 1 where something was found, or not looked at.
--
--     lua5.4 sum.lua TOP FILE…
local cjson = require("cjson")

local top = table.remove(arg, 1)
local totals, is_well = {}, true

local function add(into, from)
  for key, value in pairs(from) do
    if type(value) == "table" then
      into[key] = into[key] or {}
      add(into[key], value)
    else
      into[key] = (into[key] or 0) + value
    end
  end
end
for _, path in ipairs(arg) do
  local has_ended = false
  for line in io.lines(path) do
    if line:sub(1, 1) == "{" then
      add(totals, cjson.decode(line))
      has_ended = true
    else
      print(line)
    end
  end
  if not has_ended then
    print("no end: " .. path)
    is_well = false
  end
end
if not totals.designs then os.exit(1) end

local function count_of(map)
  local count = 0
  for _ in pairs(map) do count = count + 1 end
  return count
end
local function line_of(map)
  local parts = {}
  for key in pairs(map) do parts[#parts + 1] = key end
  table.sort(parts)
  for i, key in ipairs(parts) do parts[i] = ("%s %d"):format(key, map[key]) end
  return table.concat(parts, ", ")
end

-- Every rule file there is, and every word a rule can say, must have been held.
local skipped, all = {}, 0
local pipe = assert(io.popen("cd '" .. top .. "/rules' && ls */*/*.lua"))
for path in pipe:lines() do
  local rule = path:match("^[^/]+/(.*)%.lua$")
  all = all + 1
  if not totals.rules[rule] then skipped[#skipped + 1] = rule end
end
pipe:close()
local unsaid, said = {}, 0
local known = dofile(top .. "/docs/schemas/luacheck.lua").read_globals
local function hear(word)
  said = said + 1
  if (totals.used[word] or 0) == 0 then unsaid[#unsaid + 1] = word end
end
for word, is in pairs(known) do
  if word == "calc" then
    hear(word)
  else
    for inner in pairs(is.fields or {}) do hear(word .. "." .. inner) end
    if not is.fields then hear(word) end
  end
end
table.sort(unsaid)
local spoiled, ways = 0, count_of(totals.spoiled)
for _, times in pairs(totals.spoiled) do spoiled = spoiled + times end

print(("%d designs (%d of them refused), %d findings, %d disagreements in %d designs"):format(totals.designs, totals.unread, totals.findings,
  totals.disagreements, totals.designs_apart))
print("kinds: " .. line_of(totals.kinds))
print("tests: " .. line_of(totals.relations))
print(("%d of %d rules held, %d results of calculators taken from the core, %d of %d words said"):format(all - #skipped, all, totals.calls, said - #unsaid, said))
if #skipped > 0 then print("not held: " .. table.concat(skipped, ", ")) end
if #unsaid > 0 then print("not said: " .. table.concat(unsaid, ", ")) end
print(("%d reports spoiled in %d ways"):format(spoiled, ways))
for way, times in pairs(totals.spoiled) do
  if times == 0 then
    print("never spoiled: " .. way)
    is_well = false
  end
end
local is_held = totals.disagreements == 0 and totals.unread * 4 < totals.designs and #unsaid == 0 and (all - #skipped) * 10 >= all * 9
os.exit(is_well and is_held and 0 or 1)

-- Reads every #include in core/ against the table of rooms: what a room may use, and which room alone
-- knows which library. The build's include paths say the same for our own headers; system headers lie in
-- paths that every room sees, so that they need this test.
local top = arg[1] or "."
local uses = {
  base = {}, measure = { "base" }, yaml = { "base" }, design = { "measure" }, tables = { "measure" },
  calc = { "design", "tables" }, rulebook = { "measure" }, finding = { "rulebook" },
  intake = { "yaml", "design", "rulebook" }, judge = { "calc", "finding" }, report = { "design", "finding", "calc" },
  review = { "intake", "judge", "report" }, desk = { "review", "report" },
}
-- Which files may include a library: by room, or by the start of a file's name in it.
local libraries = {
  ["yaml.h"] = "^core/yaml/", ["geos_c.h"] = "^core/calc/layout", ["jansson.h"] = "^core/report/",
  ["lua.h"] = "^core/judge/", ["lauxlib.h"] = "^core/judge/", ["lualib.h"] = "^core/judge/",
}
local standard = {}
for name in ([[assert ctype errno fcntl float getopt inttypes limits locale malloc math poll setjmp signal stdarg stdatomic stdbool
  stddef stdint stdio stdlib string strings sys/stat sys/types sys/wait time unistd dirent sys/resource]]):gmatch("%S+") do
  standard[name .. ".h"] = true
end

local function lines_of(command)
  local list, pipe = {}, assert(io.popen(command))
  for line in pipe:lines() do list[#list + 1] = line end
  pipe:close()
  return list
end

local function reach(room, seen)
  seen = seen or {}
  if not seen[room] then
    seen[room] = true
    for _, below in ipairs(uses[room]) do reach(below, seen) end
  end
  return seen
end

local wrong, count = {}, 0
local function complain(file, line, text) wrong[#wrong + 1] = ("%s:%d: %s"):format(file, line, text) end

local room_of = {}
local files = lines_of("cd '" .. top .. "' && find core include -name '*.[ch]' | sort")
for _, file in ipairs(files) do
  local room, name = file:match("^core/([^/]+)/(.+)$")
  if room and not uses[room] then complain(file, 0, "no such room in the plan") end
  if room and name:match("%.h$") then
    if room_of[name] then complain(file, 0, "a header of this name stands in " .. room_of[name] .. ", too") end
    room_of[name] = room
  end
end

for _, file in ipairs(files) do
  local room, first, number = file:match("^core/([^/]+)/"), nil, 0
  for line in io.lines(top .. "/" .. file) do
    number = number + 1
    local open, name = line:match('^%s*#%s*include%s*([<"])([^>"]+)')
    if name then
      count = count + 1
      first = first or name
      if open == "<" then
        local allowed = libraries[name] or name:match("^libxml/") and "^core/report/"
          or name:match("^nettle/") and "^core/base/digest"
        if allowed and not file:match(allowed) then
          complain(file, number, "<" .. name .. "> is known to one room alone")
        elseif not allowed and not standard[name] and not name:match("^plumbrule/") then
          complain(file, number, "<" .. name .. "> is in nobody's plan")
        end
      elseif name:match("^plumbrule/") then
        if not reach(room)["review"] then complain(file, number, "the public header is above this room") end
      elseif not name:match("%.facts$") then
        local from = room_of[name]
        if not from then
          complain(file, number, '"' .. name .. '" is no header of a room')
        elseif room and not reach(room)[from] then
          complain(file, number, ("%s may not use %s (%s)"):format(room, from, name))
        end
      end
    end
  end
  -- A .c includes its own header first, where it has one.
  local own = file:match("([^/]+)%.c$")
  if own and room_of[own .. ".h"] == room and first ~= own .. ".h" then
    complain(file, 1, "its own header comes first")
  end
end

for _, text in ipairs(wrong) do io.stderr:write(text, "\n") end
io.stderr:write(("%d includes in %d files read, %d wrong\n"):format(count, #files, #wrong))
os.exit(#wrong == 0 and count > 100 and 0 or 1)

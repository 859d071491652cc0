-- Prints gcovr's counts by room, then the files of which most is left; with --left each line of it. Ends with 1 where
-- core/ as a whole is below the aim.
local json = require "cjson"
local AIM_LINES, AIM_BRANCHES, FILES = 95, 85, 15

local file = assert(io.open(arg[1]))
local counted = json.decode(file:read("a"))
file:close()

local rooms, files, total = {}, {}, {lines = 0, run = 0, branches = 0, taken = 0}

local function add(to, line)
  to.lines = to.lines + 1
  to.run = to.run + (line.count > 0 and 1 or 0)
  for _, branch in ipairs(line.branches) do
    to.branches = to.branches + 1
    to.taken = to.taken + (branch.count > 0 and 1 or 0)
  end
end

for _, one in ipairs(counted.files) do
  local room = one.file:match("core/([^/]+)/")
  rooms[room] = rooms[room] or {name = room, lines = 0, run = 0, branches = 0, taken = 0}
  local here = {name = one.file, lines = 0, run = 0, branches = 0, taken = 0, left = {}}
  for _, line in ipairs(one.lines) do
    if not line["gcovr/noncode"] then
      for _, to in ipairs {total, rooms[room], here} do add(to, line) end
      local missed, number = 0, math.tointeger(line.line_number)
      for _, branch in ipairs(line.branches) do missed = missed + (branch.count > 0 and 0 or 1) end
      if line.count == 0 then
        table.insert(here.left, number .. ": not run")
      elseif missed > 0 then
        table.insert(here.left, number .. ": " .. missed .. " of " .. #line.branches .. " branches")
      end
    end
  end
  table.insert(files, here)
end

local function share(part, all) return all > 0 and 100 * part / all or 100 end

local function print_row(name, one)
  print(string.format("%-12s %6d of %6d lines %6.1f %%   %6d of %6d branches %6.1f %%", name, one.run, one.lines,
    share(one.run, one.lines), one.taken, one.branches, share(one.taken, one.branches)))
end

print("Coverage of core/. Branches that only an exception takes, and those inside assert, are not counted.")
local names = {}
for name in pairs(rooms) do table.insert(names, name) end
table.sort(names)
for _, name in ipairs(names) do print_row(name, rooms[name]) end
print_row("all", total)

table.sort(files, function(a, b)
  local left_a, left_b = a.branches - a.taken + a.lines - a.run, b.branches - b.taken + b.lines - b.run
  if left_a ~= left_b then return left_a > left_b end
  return a.name < b.name
end)
local is_long = arg[2] == "--left"
print("\nLeft, most first:")
for i = 1, is_long and #files or FILES do
  local one = files[i]
  print(string.format("%-40s %4d lines %4d branches", one.name, one.lines - one.run, one.branches - one.taken))
  for _, line in ipairs(is_long and one.left or {}) do print("    " .. one.name .. ":" .. line) end
end
os.exit(share(total.run, total.lines) >= AIM_LINES and share(total.taken, total.branches) >= AIM_BRANCHES and 0 or 1)

-- How time and memory grow: growth.lua TOP BUILD FOLDER [--full | --memory]. Designs come from generate.lua and are read again and
-- again where the list is longer than what was made. Each line: what, its size, seconds, and what follows from them.
local top, build, folder, is_full = arg[1], arg[2], arg[3], arg[4] == "--full"

local function run(command)
  local pipe = assert(io.popen(command))
  local text = pipe:read("a")
  assert(pipe:close(), command)
  return text
end
local function quoted(text) return "'" .. text:gsub("'", "'\\''") .. "'" end
local generate = ("lua5.4 %s/tests/bench/generate.lua "):format(quoted(top))

-- One run of plumbrule: seconds, and private KiB of the parent and of the largest worker.
local function watch(every, words)
  local text = run(("%s/bench_watch %d %s/plumbrule %s"):format(quoted(build), every, quoted(build), words))
  local seconds, parent, _, worker, code = text:match("(%S+) (%d+) (%d+) (%d+) (%d+)")
  assert(tonumber(code) < 3 or code == "4", "plumbrule " .. words .. " ended with " .. code)
  return { is_cut = code == "4", seconds = tonumber(seconds), parent = tonumber(parent), worker = tonumber(worker) }
end
local function median(times, every, words)
  local runs = {}
  for i = 1, times do runs[i] = watch(every, words) end
  table.sort(runs, function(a, b) return a.seconds < b.seconds end)
  return runs[(times + 1) // 2]
end

-- The exponent of a power fitted to all points, and from the last but one to the last, beside that of n log n there.
local function fit(name, points)
  local n, sx, sy, sxx, sxy = #points, 0, 0, 0, 0
  for _, point in ipairs(points) do
    local x, y = math.log(point.size), math.log(point.seconds)
    sx, sy, sxx, sxy = sx + x, sy + y, sxx + x * x, sxy + x * y
  end
  local a, b = points[n - 1], points[n]
  local last = math.log(b.seconds / a.seconds) / math.log(b.size / a.size)
  local nlogn = math.log(b.size * math.log(b.size) / (a.size * math.log(a.size))) / math.log(b.size / a.size)
  print(("  growth with %s: exponent %.2f over all, %.2f from %d to %d   (n log n there: %.2f)"):format(name,
    (n * sxy - sx * sy) / (n * sxx - sx * sx), last, a.size, b.size, nlogn))
end

local function write_list(path, designs, count)
  local file = assert(io.open(path, "w"))
  for i = 1, count do file:write(designs[(i - 1) % #designs + 1], "\n") end
  assert(file:close())
end

local checks = ("--book marrow-bay --catalogues %s/samples/catalogue "):format(quoted(top))
local function made(options, into)
  run(generate .. options .. " --out " .. quoted(into))
  local designs = {}
  for line in io.lines(into .. "/list") do designs[#designs + 1] = line end
  return designs
end

local function grow_designs()
  local designs, points, list = made("--seed 21 --count " .. (is_full and 2000 or 300), folder .. "/many"), {}, folder .. "/some"
  print(("Designs in one batch, one job (%d different ones, again and again):"):format(#designs))
  for _, size in ipairs(is_full and { 1, 10, 100, 1000, 10000, 100000 } or { 1, 10, 100, 1000 }) do
    write_list(list, designs, size)
    local one = median(size <= 100 and 5 or 1, size < 100 and 1 or 20, ("check --from-list %s --jobs 1 "):format(quoted(list)) .. checks)
    print(("  %6d designs %10.3f s %8.1f designs/s   private memory: parent %6d KiB, worker %6d KiB"):format(size, one.seconds, size / one.seconds, one.parent, one.worker))
    points[#points + 1] = { size = size, seconds = one.seconds, memory = one.parent + one.worker }
  end
  fit("designs", points)
  print(("  memory at %d designs / memory at 1000 %20.3f"):format(points[#points].size, points[#points].memory / points[4].memory))
end

local function grow_rules()
  local designs, points = made("--seed 22 --count 20", folder .. "/twenty"), {}
  local parts = { -- what a rule compares, by turns
    { "circuit", 'shall.be_at_least("Supports", %d * ft, circuit.support_spacing)', "circuit" },
    { "roof_plane", 'shall.not_exceed("Dead load", plane.dead_load, %d * psf)', "plane" },
    { "label", 'shall.be_at_least("Letters", %d * inch, label.letter_height)', "label" },
    { "busbar", 'shall.not_exceed("Device", bus.protecting_device, %d * A + bus.rating)', "bus" },
    { "disconnect", 'shall.not_exceed("Distance", disconnect.distance_to_meter, %d * ft)', "disconnect" },
  }
  print("Rules in one book, over 20 designs:")
  for _, size in ipairs { 5, 50, 500 } do
    local book = ("%s/book%d"):format(folder, size)
    run("mkdir -p " .. quoted(book))
    local file = assert(io.open(book .. "/book.yaml", "w"))
    file:write(("book: book%d\ntitle: Made rules\nmaintained_by: The benchmark\nrole: authority\nscope: what the benchmark compares\n"):format(size))
    file:close()
    for i = 1, size do
      local part = parts[(i - 1) % #parts + 1]
      file = assert(io.open(("%s/rule-%03d.lua"):format(book, i), "w"))
      file:write(('return {\n  title = "Made rule %d",\n  cite = "bench %d",\n  about = "%s",\n  check = function(%s) %s end,\n}\n')
        :format(i, i, part[1], part[3], part[2]:format(i)))
      file:close()
    end
    local one = median(5, 0, ("check --from-list %s --jobs 1 --book %s --on 2026-08-03 --catalogues %s/samples/catalogue"):format(quoted(folder .. "/twenty/list"), quoted(book), quoted(top)))
    print(("  %6d rules   %10.3f s"):format(size, one.seconds))
    points[#points + 1] = { size = size, seconds = one.seconds }
  end
  assert(#designs == 20)
  fit("rules", points)
end

local function grow_modules()
  local points = {}
  print("Modules of one design on four planes, drawn up with care, as a line of JSON:")
  for _, size in ipairs { 10, 100, 500, 1000, 2000 } do
    local path = ("%s/modules-%d.yaml"):format(folder, size)
    run(("%s --seed 3 --care 1 --planes 4 --modules %d > %s"):format(generate, size, quoted(path)))
    local text = watch(5, ("check %s --format json "):format(quoted(path)) .. checks) -- memory
    local one = median(size > 500 and 3 or 5, 0, ("check %s --format json "):format(quoted(path)) .. checks)
    print(("  %6d modules %10.3f s   private memory %7d KiB%s"):format(size, one.seconds, text.parent,
      one.is_cut and "   (cut short: a rule ran past its budget)" or ""))
    points[#points + 1] = { size = size, seconds = one.seconds }
  end
  fit("modules", points)
end

-- The same list in two halves, by two programs that know nothing of each other: what the machine itself has to give.
local function side_by_side(designs, size)
  local halves = { folder .. "/half-1", folder .. "/half-2" }
  for i, half in ipairs(halves) do
    local part = {}
    for k = i, size, 2 do part[#part + 1] = designs[(k - 1) % #designs + 1] end
    write_list(half, part, #part)
  end
  return function()
    local both = {}
    for i, half in ipairs(halves) do
      both[i] = ("%s/plumbrule check --from-list %s --jobs 1 %s >%s.out &"):format(quoted(build), quoted(half), checks, quoted(half))
    end
    local text = run(("%s/bench_watch 0 /bin/sh -c %s"):format(quoted(build), quoted(table.concat(both, " ") .. " wait")))
    return tonumber(text:match("%S+"))
  end
end

local function compare_jobs()
  local list = folder .. "/some"
  local designs, ratios, apart = {}, {}, {}
  for line in io.lines(folder .. "/many/list") do designs[#designs + 1] = line end
  local size = is_full and 1000 or 300
  local run_apart = side_by_side(designs, size)
  write_list(list, designs, size)
  for i = 1, is_full and 9 or 5 do -- nobody watches their memory: that takes time from a processor
    local one = watch(0, ("check --from-list %s --jobs 1 "):format(quoted(list)) .. checks)
    local two = watch(0, ("check --from-list %s --jobs 2 "):format(quoted(list)) .. checks)
    ratios[i] = one.seconds / two.seconds
    apart[i] = one.seconds / run_apart()
  end
  table.sort(ratios)
  table.sort(apart)
  local memory = watch(20, ("check --from-list %s --jobs 2 "):format(quoted(list)) .. checks)
  print(("Jobs, over %d designs, medians of %d interleaved rounds:"):format(size, #ratios))
  print(("  rate of two jobs / rate of one             %9.2f   (aim: at least 1.9)"):format(ratios[(#ratios + 1) // 2]))
  print(("  two programs apart, half the list each     %9.2f   (what this machine gives)"):format(apart[(#apart + 1) // 2]))
  print(("  two loops in registers, which no memory holds up %3.2f   (the same, of its processors alone)"):format(
    tonumber(run(quoted(build .. "/bench_pair")))))
  print(("  private memory of a further worker         %9d KiB   (aim: at most 400)"):format(memory.worker))
end

-- Does a batch's memory stay what it is? What is used for moments only is seen by chance, in a long run more surely; so
-- the short one is watched as often as the long one is in all.
local function compare_memory()
  local designs, list, memory = made("--seed 21 --count 300", folder .. "/many"), folder .. "/some", {}
  local words = ("check --from-list %s --jobs 2 --book %s/tests/bench/books/electrical --on 2026-08-03 --catalogues %s/samples/catalogue"):format(
    quoted(list), quoted(top), quoted(top))
  print(("Batches with two jobs and the electrical book (%d different designs, again and again):"):format(#designs))
  for _, size in ipairs { 1000, 100000 } do
    write_list(list, designs, size)
    local one = watch(size == 1000 and 1 or 20, words)
    print(("  %6d designs %10.3f s   private memory: parent %6d KiB, worker %6d KiB"):format(size, one.seconds, one.parent, one.worker))
    memory[size] = one.parent + one.worker
  end
  print(("  memory at 100000 designs / memory at 1000 %20.3f"):format(memory[100000] / memory[1000]))
end

if arg[4] == "--memory" then
  compare_memory()
else
  grow_designs()
  grow_rules()
  grow_modules()
  compare_jobs()
end

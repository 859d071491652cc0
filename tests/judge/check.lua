-- Holds the core against the second judge on many designs.
--
--     lua5.4 check.lua --top DIR --program FILE --work DIR [--count N] [--seed S] [--share K/M] [--told N] [--modules A..B]
--
-- Designs are those of tests/bench/generate.lua, of which every fifth lacks a whole block, and of every five one is a sample
-- of samples/ with facts taken out and numbers changed. They go by the hundred to one stack of books and one day after
-- another. --share: only each M-th hundred, from the K-th on. Prints at most N disagreements (40), then a line of JSON with
-- all counts; ends with 1 where there was any.
--
-- Of the first design of each hundred that both sides agree on, the report is also spoiled in every way of spoil.lua: that
-- a spoiled report passes is a disagreement, too.
local options = { count = 200, seed = 1, share = "1/1", told = 40 }
for i = 1, #arg, 2 do options[arg[i]:match("^%-%-(%l+)$")] = math.tointeger(tonumber(arg[i + 1])) or arg[i + 1] end
local top, work = options.top, options.work
package.path = top .. "/tests/judge/?.lua;" .. package.path

collectgarbage("generational")
local cjson = require("cjson")
local facts = require("facts")
local books = require("books")
local design = require("design")
local calls = require("calls")
local judge = require("judge")
local agree = require("agree")
local spoil = require("spoil")

local function quote(text) return "'" .. text:gsub("'", "'\\''") .. "'" end
local function shell(...)
  local command = string.format(...)
  local is_done, _, code = os.execute(command)
  return is_done, code
end
local function read(path)
  local file = assert(io.open(path, "rb"))
  local text = file:read("a")
  file:close()
  return text
end
local function write(path, text)
  local file = assert(io.open(path, "wb"))
  file:write(text)
  file:close()
end

-- ---- the books and their copies ---------------------------------------------------------------------------------------

local model = facts.read(top)
local folders = { top .. "/rules", top .. "/tests/judge/books" }
local found = books.find(folders)

-- Folders like those of the books, in which each rule tells what its calculators give.
local function copy_rules()
  for i, folder in ipairs(folders) do
    local copy = ("%s/told-%d"):format(work, i)
    assert(shell("mkdir -p %s && cp -R %s/. %s && rm -rf %s/*/*/cases %s/*/cases", quote(copy), quote(folder), quote(copy), quote(copy), quote(copy)))
    local pipe = assert(io.popen(("find %s -name '*.lua'"):format(quote(copy))))
    for path in pipe:lines() do write(path, calls.instrument(read(path))) end
    pipe:close()
  end
end

-- Which books, on which day (nil: the design's own).
local stacks = {
  { books = { "marrow-bay", "words" } },
  { books = { "larch-pass", "words" } },
  { books = { "ellowfield", "words" } },
  { books = { "marrow-bay", "sallow-point", "lantern-roofworks", "words" }, on = "2026-09-01" },
  { books = { "marrow-bay", "words" }, on = "2022-05-01" },
  { books = { "larch-pass", "sallow-point", "words" }, on = "2020-02-01" },
  { books = { "marrow-bay", "reed-hollow-fire", "words" }, on = "2025-09-01" },
  { books = { "ellowfield", "lantern-roofworks", "words" }, on = "2023-03-01" },
  { books = { "larch-pass", "words" }, on = "2023-07-01" },
  { books = { "ellowfield", "sallow-point", "words" }, on = "2025-06-01" },
}

-- ---- the designs ------------------------------------------------------------------------------------------------------

local generate = dofile(top .. "/tests/bench/generate.lua")
local low, high = tostring(options.modules or ""):match("^(%d+)%.*(%d*)$")
local made_by = { seed = options.seed, modules = low and { math.tointeger(tonumber(low)), math.tointeger(tonumber(high)) or math.tointeger(tonumber(low)) } }
local samples = {}
do
  local pipe = assert(io.popen("ls " .. quote(top) .. "/samples/*/*.yaml"))
  for path in pipe:lines() do
    local text = read(path)
    if not path:find("/catalogue/", 1, true) and text:find("\nproject:", 1, true) then samples[#samples + 1] = text end
  end
  pipe:close()
  assert(#samples >= 3)
end

-- Without one block (all buses of one of two panels, say): then more may be there than is told.
local function without_block(text)
  local lines, blocks = {}, {}
  for line in text:gmatch("[^\n]*") do
    lines[#lines + 1] = line
    if line:match("^    +[%l_]+:$") then blocks[#blocks + 1] = #lines end
  end
  if #blocks == 0 then return text end
  local first = blocks[math.random(#blocks)]
  local indent = #lines[first]:match("^ *")
  repeat table.remove(lines, first) until not lines[first] or lines[first]:match("%S") and #lines[first]:match("^ *") <= indent
  return table.concat(lines, "\n")
end

-- A sample in which some facts are forgotten and some amounts are others.
local function changed_sample(number)
  math.randomseed(options.seed, number)
  local lines, text = {}, samples[math.random(#samples)]
  if math.random() < 0.5 then text = without_block(text) end
  local forget, change = math.random() * 0.04, math.random() * 0.08
  for line in text:gmatch("[^\n]*") do
    local is_fact = line:match("^ +[%l_]+: [^%[{#]") and not line:match("^ +name:") and not line:match("date:")
    if not (is_fact and math.random() < forget) then
      line = line:gsub(", ([%l_]+): ([^,%[%]{}\"]+)", function(name, value)
        if name ~= "name" and math.random() < forget then return "" end
        local amount, unit = value:match("^(%d+%.?%d*) (%a+)$")
        if amount and math.random() < change then return (", %s: %.6g %s"):format(name, amount * (0.5 + math.random()), unit) end
      end)
      if is_fact and math.random() < change then
        line = line:gsub(": (%d+%.?%d*) (%a+)$", function(amount, unit) return (": %.6g %s"):format(amount * (0.5 + math.random()), unit) end)
      end
      lines[#lines + 1] = line
    end
  end
  return table.concat(lines, "\n")
end

local function write_designs(first, last)
  local paths = {}
  for number = first, last do
    local path = ("%s/design-%06d.yaml"):format(work, number)
    local text = number % 5 == 0 and changed_sample(number) or generate.design(options.seed, number, made_by)
    write(path, number % 5 == 1 and without_block(text) or text)
    paths[#paths + 1] = path
  end
  write(work .. "/list", table.concat(paths, "\n") .. "\n")
  return paths
end

-- ---- both sides -------------------------------------------------------------------------------------------------------

local function core_reports(stack, places, output)
  local command = { quote(options.program), "check --from-list", quote(work .. "/list"), "--catalogues", quote(top .. "/samples/catalogue") }
  for _, place in ipairs(places) do command[#command + 1] = "--books " .. quote(place) end
  for _, name in ipairs(stack.books) do command[#command + 1] = "--book " .. name end
  if stack.on then command[#command + 1] = "--on " .. stack.on end
  shell("PLUMBRULE_BOOKS= %s >%s 2>%s", table.concat(command, " "), quote(output), quote(output .. ".errors"))
  return io.lines(output)
end

local function day_of(report, stack) return stack.on or report.on end

local totals = { designs = 0, unread = 0, findings = 0, disagreements = 0, designs_apart = 0, calls = 0, rules = {}, kinds = {}, used = {}, relations = {}, spoiled = {} }

local function count_relations(tests)
  for _, test in ipairs(tests) do
    totals.relations[test.relation] = (totals.relations[test.relation] or 0) + 1
    for _, option in ipairs(test.options or {}) do count_relations(option.tests) end
  end
end

local resolved_of = {}
local function resolved(stack, on)
  local key = table.concat(stack.books, "+") .. "@" .. on
  resolved_of[key] = resolved_of[key] or books.resolve(found, stack.books, on)
  return resolved_of[key]
end

local function spoil_report(line, findings)
  return spoil.try(line, function(report) return agree.hold(report, findings, {}, {}) end, totals.spoiled)
end

-- The disagreements on one design; `line` only where its report is to be spoiled, too.
local function hold(path, stack, report, copy, line)
  totals.designs = totals.designs + 1
  if #report.findings == 0 then
    totals.unread = totals.unread + 1
    return {}
  end
  local made = design.read(path, model, top .. "/samples/catalogue")
  local findings = judge.review(made, resolved(stack, day_of(report, stack)), calls.told(copy), totals.used, totals)
  for _, finding in ipairs(findings) do count_relations(finding.tests) end
  totals.findings = totals.findings + #findings
  local told = agree.hold(report, findings, totals.rules, totals.kinds)
  if line and #told == 0 then
    for _, way in ipairs(spoil_report(line, findings)) do told[#told + 1] = "nobody noticed: " .. way end
  end
  return told
end

local function hold_hundred(first, last, stack)
  local paths = write_designs(first, last)
  local reports = core_reports(stack, folders, work .. "/reports")
  local copies = core_reports(stack, { work .. "/told-1", work .. "/told-2" }, work .. "/copies")
  for i, path in ipairs(paths) do
    local line, copy = reports(), copies()
    assert(line and copy, "no report of " .. path .. ": see " .. work .. "/reports.errors")
    local told = hold(path, stack, cjson.decode(line), cjson.decode(copy), i == 1 and line)
    for _, sentence in ipairs(told) do
      totals.disagreements = totals.disagreements + 1
      if totals.disagreements <= options.told then
        print(("%s with %s %s: %s"):format(path:match("[^/]+$"), table.concat(stack.books, "+"), stack.on or "", sentence:gsub("\1", "…")))
      end
    end
    if #told > 0 then totals.designs_apart = totals.designs_apart + 1 end
    if #told == 0 or totals.designs_apart > options.told then os.remove(path) end
  end
end

local HUNDRED = math.min(100, math.max(1, options.count // #stacks))
copy_rules()
local share, of = options.share:match("^(%d+)/(%d+)$")
local number = 0
for first = 1, options.count, HUNDRED do
  number = number + 1
  if number % of == share % of then
    hold_hundred(first, math.min(options.count, first + HUNDRED - 1), stacks[(number - 1) % #stacks + 1])
  end
end
print(cjson.encode(totals))
os.exit(totals.disagreements == 0 and 0 or 1)

-- What the benchmark aims at, beside what its log says: aims.lua LOG [--markdown]. What the log does not hold was not
-- measured in this run, and is not called met.
local log, is_markdown = assert(io.open(arg[1])):read("a"), arg[2] == "--markdown"

-- The text of the log between a heading and the next.
local function section(heading)
  local _, from = log:find(heading, 1, true)
  if not from then return "" end
  return log:sub(from, (log:find("\n%S", from) or #log))
end
local function number(text, pattern) return tonumber(text:match(pattern) or "") end

local rows = {}
local function aim(what, relation, limit, unit, value)
  rows[#rows + 1] = { what, relation == "<" and "at most" or "at least", limit, unit, value,
    value and ((relation == "<" and value <= limit or relation == ">" and value >= limit) and "met" or "missed") or "not measured" }
end
-- No growth worse than n log n: its exponent over the last stretch, less that of n log n, within what runs scatter by.
local function growth(name)
  local last, there = log:match("growth with " .. name .. ": exponent %S+ over all, (%S+) from .-n log n there: (%S+)%)")
  aim("growth with " .. name .. ", exponent over the last stretch", "<", tonumber(there or "1"), "", tonumber(last or ""))
end

local check, html = section "Whole runs", section "With the HTML report"
aim("whole check / (empty program + 2 × empty Lua)", "<", 1, "", number(check, "empty %+ 2 × lua5.4 %-e ''%)%s+(%S+)"))
aim("whole check with HTML report and drawings", "<", 50, "ms", (number(html, "whole check%s+(%S+) µs") or 0 / 0) / 1000)
if rows[2][5] ~= rows[2][5] then rows[2][5], rows[2][6] = nil, "not measured" end
aim("warm review, all rules / event loop", "<", 5, "", number(section "In one warm process", "review, text / loop over design%+catalogues%s+(%S+)"))
local electrical = section "Electrical rules alone"
aim("electrical review / event loop over its file and catalogues", "<", 4, "", number(electrical, "review, text / loop over design%+catalogues%s+(%S+)"))
aim("electrical review / event loop over its file alone", "<", 4, "", number(electrical, "review, text / loop over the design alone%s+(%S+)"))
aim("with geometry and structure / event loop", "<", 25, "", number(section "In one warm process", "review, text / loop over design%+catalogues%s+(%S+)"))
local roof = number(section "Geometry and structure", "of it geometry and structure%s+(%S+) µs")
aim("geometry and structure, 40 modules on 6 planes", "<", 3, "ms", roof and roof / 1000)
aim("ten checks, rules / json-rules-engine", ">", 10, "", number(log, "rules / json%-rules%-engine%s+(%S+)"))
growth "designs"
growth "rules"
growth "modules"
-- A review that a limit cut short tells nothing of growth.
if log:find("modules [^\n]*cut short") then rows[#rows][6] = "missed: a rule ran past its budget" end
local at, memory = log:match("memory at (%d+) designs / memory at 1000%s+(%S+)")
aim(("memory at 100000 designs / at 1000"), "<", 1.05, "", at == "100000" and tonumber(memory) or nil)
aim("rate of two jobs / one", ">", 1.9, "", number(log, "rate of two jobs / rate of one%s+(%S+)"))
aim("private memory of a further worker", "<", 400, "KiB", number(log, "private memory of a further worker%s+(%S+)"))

if is_markdown then print("| what | aim | measured | |\n|---|---|---|---|") end
for _, row in ipairs(rows) do
  local what, relation, limit, unit, value, verdict = table.unpack(row, 1, 6)
  local function with(x) return ("%.4g%s"):format(x, unit ~= "" and " " .. unit or "") end
  print((is_markdown and "| %s | %s %s | %s | %s |" or "  %-59s %s %-9s %12s   %s"):format(what, relation, with(limit), value and with(value) or "—", verdict))
end

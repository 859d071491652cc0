-- What must stay the same, or may only move one way, when a design is changed in a way whose effect is known
-- without any figure: a fact forgotten, things told in another order, lengths told in another unit.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

-- Line by line, as `check` writes many designs: much faster than a start for each.
local function check_all(texts, book)
  local folder, names = plumb.folder(), {}
  for i, text in ipairs(texts) do
    names[i] = ("%s/meta-%04d.yaml"):format(folder, i)
    plumb.write(names[i], text)
  end
  plumb.write(folder .. "/meta.list", table.concat(names, "\n") .. "\n")
  local output = plumb.run({ "check", "--from-list", folder .. "/meta.list", "--jobs", "2", "--with-working",
    "--book", book or "marrow-bay", "--catalogues", plumb.top .. "/samples/catalogue" })
  local reports = {}
  for line in output:gmatch("[^\n]+") do
    local report = cjson.decode(line)
    -- Facts are told once, and named by number from 0.
    for _, finding in ipairs(report.findings) do
      for i, number in ipairs(finding.inputs) do finding.inputs[i] = report.facts[number + 1] end
    end
    reports[#reports + 1] = report
  end
  assert(#reports == #texts, ("%d reports of %d designs"):format(#reports, #texts))
  return reports
end

local function key_of(finding) return finding.rule .. " of " .. finding.about.kind .. " " .. finding.about.name end

local function by_key(report)
  local findings = {}
  for _, finding in ipairs(report.findings) do findings[key_of(finding)] = finding end
  return findings
end

local function is_all_well(report)
  local counts = report.counts
  return #report.problems == 0 and #report.findings > 0 and counts.fail + counts.open + counts.review == 0
end

-- FACTS FORGOTTEN

-- Each fact written on one line, as {line, key, first, last}: the bytes to take out. Names are no facts.
local function facts_of(text)
  local facts, start, number = {}, 1, 0
  for line in text:gmatch("([^\n]*)\n") do
    number = number + 1
    local key, value = line:match("^ *([%l_]+): ([^#].*)$")
    if key and key ~= "name" and key ~= "title" then
      facts[#facts + 1] = { line = number, key = key, first = start, last = start + #line }
    end
    local lead, inside = line:match("^(.-{)(.*)}$")
    if lead and (not key or value:sub(1, 1) == "{") and not line:match("^ *#") then
      local at = start + #lead
      -- Brackets and quotes hold commas of their own.
      local hidden = inside:gsub("%b[]", function(s) return ("_"):rep(#s) end):gsub("%b\"\"", function(s) return ("_"):rep(#s) end)
      for from, inner, upto in hidden:gmatch("(), ([%l_]+): [^,]*()") do
        facts[#facts + 1] = { line = number, key = inner, first = at + from - 1, last = at + upto - 2 }
      end
    end
    start = start + #line + 1
  end
  return facts
end

local function sample_of(list, count)
  local picked = {}
  for i = 0, count - 1 do picked[#picked + 1] = list[1 + i * #list // count] end
  return picked
end

-- Forgotten, a breaker serves nothing as far as the design says: whoever must have a breaker has none.
local TURNS_AGAINST = { serves = true }

-- Forgotten, a circuit has its raceway to itself as far as the design says: it shares none, and its counts stand as
-- told. One that names no connector ends on terminals.
local LEAVES = { raceway_of = "nec/raceway-shared", connector = "nec/inverter-connectors" }

local MAY_BECOME = {
  pass = { pass = true, open = true },
  notApplicable = { notApplicable = true, open = true },
  fail = { fail = true, open = true },
  open = { open = true },
  review = { review = true, open = true },
}

local function reads(finding, fact)
  for _, input in ipairs(finding.inputs) do
    if input.place and input.place.line == fact.line and input.fact:match("([%l_]+)$") == fact.key then return true end
  end
  return false
end

-- Does a pass that read the fact stand without it: another way of several holds, an assumption is said, or (a maker's
-- ampacity) the table has a figure of its own, which the fact could only lower?
local function stands_without(finding, fact)
  if fact.key == "ampacity" or LEAVES[fact.key] then return true end
  for _, test in ipairs(finding.tests) do
    if test.relation == "one_of" then return true end
  end
  for _, input in ipairs(finding.inputs) do
    if input.fact:match("([%l_]+)$") == fact.key and input.assumed then return true end
  end
  return false
end

local function hold_moves(before, after, fact)
  local where = ("line %d without %s: "):format(fact.line, fact.key)
  for key, finding in pairs(before) do
    local now = after[key]
    lu.assertNotNil(now, where .. key .. " is gone")
    local against = TURNS_AGAINST[fact.key] and (now.kind == "fail" or now.kind == "review")
    local leaves = now.kind == "notApplicable" and LEAVES[fact.key] and now.rule == LEAVES[fact.key]
    if not against and not leaves and not MAY_BECOME[finding.kind][now.kind] then
      lu.fail(("%s%s went from %s to %s"):format(where, key, finding.kind, now.kind))
    end
  end
  for key, finding in pairs(after) do
    if not before[key] and finding.kind == "pass" then lu.fail(where .. key .. " passes anew") end
  end
end

local function forget(sample, count, book)
  local text = plumb.read(("%s/samples/%s.yaml"):format(plumb.top, sample))
  local facts = facts_of(text)
  count = math.min(os.getenv("FORGET") == "all" and #facts or count, #facts)
  facts = sample_of(facts, count)
  local texts = { text }
  for i, fact in ipairs(facts) do texts[i + 1] = text:sub(1, fact.first - 1) .. text:sub(fact.last + 1) end
  local reports = check_all(texts, book)
  local before, held = by_key(reports[1]), 0
  for i, fact in ipairs(facts) do
    local report = reports[i + 1]
    if #report.findings == 0 then
      lu.assertTrue(#report.problems > 0, ("line %d without %s is silent"):format(fact.line, fact.key))
    else
      local after = by_key(report)
      held = held + 1
      hold_moves(before, after, fact)
      if is_all_well(report) then
        for key, finding in pairs(before) do
          if finding.kind == "pass" and reads(finding, fact) and not stands_without(after[key], fact) then
            lu.fail(("all is well without %s of line %d, on which %s rests"):format(fact.key, fact.line, key))
          end
        end
      end
    end
  end
  -- Nearly every fact can be forgotten without the design becoming unreadable.
  lu.assertTrue(held > 0.9 * count, ("%d of %d could be read"):format(held, count))
end

-- Some facts of each sample; all of them where FORGET=all stands in the environment.
TestForgotten = {}
function TestForgotten:test_a_house_that_stands() forget("quill-hollow/standing", 120) end
function TestForgotten:test_a_house_that_fails() forget("quill-hollow/failing", 25) end
function TestForgotten:test_a_house_half_surveyed() forget("quill-hollow/unfinished", 25) end
function TestForgotten:test_a_flat_roof() forget("coast-and-summit/tallow-court", 25, "larch-pass") end
function TestForgotten:test_a_roof_in_the_snow() forget("coast-and-summit/fennel-row", 40, "larch-pass") end
function TestForgotten:test_a_hip_roof() forget("coast-and-summit/osprey-rise", 25, "larch-pass") end
function TestForgotten:test_microinverters_and_a_subpanel() forget("three-roofs/moss-end", 25, "ellowfield") end
function TestForgotten:test_a_tap_on_the_service() forget("three-roofs/tern-lane", 25, "ellowfield") end

-- THE SAME, TOLD OTHERWISE

-- Kinds, sentences of what is compared and margins, by finding; order and places are left out.
local function verdicts(report, with_words)
  local list = {}
  for key, finding in pairs(by_key(report)) do
    local tests = {} -- a rule that goes over a list compares in the list's order
    for i, test in ipairs(finding.tests) do
      local margin = test.margin and test.margin ~= cjson.null and ("%.6f"):format(test.margin + 0.0):gsub("^%-(0%.0+)$", "%1") or "-"
      tests[i] = (with_words and test.what or "") .. " | " .. margin
    end
    if not with_words then table.sort(tests) end
    list[#list + 1] = key .. " | " .. finding.kind .. " | " .. table.concat(tests, " | ") .. (with_words and " | " .. finding.message or "")
  end
  table.sort(list)
  return list
end

local function reversed(list)
  local other = {}
  for i = #list, 1, -1 do other[#other + 1] = list[i] end
  return other
end

-- The text cut at each line that matches; what stands before the first comes first.
local function cut(text, pattern)
  local parts = { "" }
  for line in text:gmatch("[^\n]*\n") do
    if line:match(pattern) then parts[#parts + 1] = "" end
    parts[#parts] = parts[#parts] .. line
  end
  return table.remove(parts, 1), parts
end

-- Each run of "- {…}" lines, and each block list of circuits and roof planes, the other way round.
local function lists_reversed(text)
  local out, run = {}, {}
  local function flush()
    for _, line in ipairs(reversed(run)) do out[#out + 1] = line end
    run = {}
  end
  for line in text:gmatch("[^\n]*\n") do
    if line:match("^ +%- {") then
      run[#run + 1] = line
    else
      flush()
      out[#out + 1] = line
    end
  end
  flush()
  local head, parts = cut(table.concat(out), "^%l")
  for i, part in ipairs(parts) do
    if part:match("^circuits:") then
      local first, items = cut(part, "^  %- ")
      parts[i] = first .. table.concat(reversed(items))
    end
  end
  return head .. table.concat(parts)
end

-- Lengths in inches told in millimetres. Sizes of raceways are names, and fractions stay as they are.
local function in_millimetres(text)
  local count = 0
  local changed = text:gsub("([%[ ])([%d.]+) in%f[^%w]", function(before, number)
    count = count + 1
    return ("%s%.9g mm"):format(before, tonumber(number) * 25.4)
  end)
  assert(count > 40)
  return changed
end

TestToldOtherwise = {}

function TestToldOtherwise:test_order_and_units()
  for _, sample in ipairs({ "standing", "failing", "unfinished" }) do
    local text = plumb.sample(sample)
    local head, parts = cut(text, "^%l")
    local reports = check_all({ text, head .. table.concat(reversed(parts)), lists_reversed(text), in_millimetres(text) })
    for _, report in ipairs(reports) do lu.assertEquals(report.problems, {}) end
    lu.assertEquals(verdicts(reports[2], true), verdicts(reports[1], true), sample .. ", its parts the other way round")
    lu.assertEquals(verdicts(reports[3]), verdicts(reports[1]), sample .. ", its lists the other way round")
    lu.assertEquals(verdicts(reports[4]), verdicts(reports[1]), sample .. " in millimetres")
  end
end

-- WHAT IS TAKEN DOWN OR TOO EARLY

TestTakenAway = {}

-- Each thing that the array needs, marked as removed: never all well.
function TestTakenAway:test_what_the_array_needs_is_removed()
  local text = plumb.sample("standing")
  local circuit = "circuits:\n  - name: roof-run-1\n"
  local texts = {
    plumb.change(text, "  - name: inverter-1\n", "  - name: inverter-1\n    status: removed\n"),
    plumb.change(text, "status: new\n    location: garage", "status: removed\n    location: garage"),
    plumb.change(text, "{name: low, ", "{name: low, status: removed, "),
    plumb.change(text, circuit, circuit .. "    status: removed\n"),
    plumb.change(text, "protection: none, interrupting_rating: 22 kA, status: new", "protection: none, interrupting_rating: 22 kA, status: removed"),
    plumb.change(text, text:match("  attachment_rows:\n.-\n\n"), "  attachment_rows: none\n\n"),
    plumb.change(text, "modules: [high]", "modules: none"),
  }
  for i, report in ipairs(check_all(texts)) do
    lu.assertEquals(report.problems, {}, "change " .. i)
    lu.assertTrue(report.counts.fail > 0, "change " .. i .. " stands")
  end
end

-- Before the town adopted anything hardly a rule holds: that is no reason to say that all stands.
function TestTakenAway:test_a_day_before_the_first_adoption()
  local early = plumb.change(plumb.sample("standing"), "application_date: 2026-08-03", "application_date: 1926-08-03")
  local report = plumb.check(early)
  lu.assertEquals(report.exit, 3)
  lu.assertEquals(report.problems[1].code, "day-too-early")
  lu.assertStrContains(report.problems[1].message, "marrow-bay adopts nothing on 1926-08-03")
end

local code = lu.LuaUnit.run()
plumb.clean()
os.exit(code)

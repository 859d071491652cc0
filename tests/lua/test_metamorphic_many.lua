-- Designs, rules and books told otherwise, on many designs: keys and lists in another order, other units in the design
-- and in the rules, another order of adoption, an empty book, more workers. Verdicts must not move.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")
package.path = plumb.top .. "/tests/judge/?.lua;" .. package.path
local tree = require("tree")
local facts = require("facts")
local quantity = require("quantity")
local generate = dofile(plumb.top .. "/tests/bench/generate.lua")

local DESIGNS = 15
local model = facts.read(plumb.top)

local texts = { plumb.sample("standing"), plumb.sample("failing"), plumb.sample("unfinished") }
for number = 1, DESIGNS do texts[#texts + 1] = generate.design(7, number, { seed = 7, modules = { 1, 14 } }) end

-- The output of a batch as it is. `more` are further arguments.
local function batch(designs, books, more)
  local folder, names = plumb.folder(), {}
  for i, text in ipairs(designs) do
    names[i] = ("%s/many-%04d.yaml"):format(folder, i)
    plumb.write(names[i], text)
  end
  plumb.write(folder .. "/many.list", table.concat(names, "\n") .. "\n")
  local arguments = { "check", "--from-list", folder .. "/many.list", "--catalogues", plumb.top .. "/samples/catalogue" }
  for _, book in ipairs(books) do
    arguments[#arguments + 1] = "--book"
    arguments[#arguments + 1] = book
  end
  for _, word in ipairs(more or { "--jobs", "2" }) do arguments[#arguments + 1] = word end
  return (plumb.run(arguments))
end

local function reports_of(output, count)
  local reports = {}
  for line in output:gmatch("[^\n]+") do reports[#reports + 1] = cjson.decode(line) end
  assert(#reports == count, ("%d reports of %d designs"):format(#reports, count))
  return reports
end

local plain_output = batch(texts, { "marrow-bay" })
local plain = reports_of(plain_output, #texts)
do -- what all else is held against must say something of each kind
  local kinds = {}
  for _, report in ipairs(plain) do
    for _, finding in ipairs(report.findings) do kinds[finding.kind] = (kinds[finding.kind] or 0) + 1 end
  end
  assert(kinds.pass > 1000 and kinds.fail > 20 and kinds.open > 20 and kinds.review > 20)
end

-- ---- what is compared ---------------------------------------------------------------------------------------------

local function add_tests(words, tests, digits)
  for _, test in ipairs(tests) do
    words[#words + 1] = test.relation .. " " .. test.kind
    local margin = test.margin ~= cjson.null and test.margin
    words[#words + 1] = margin and math.abs(margin) > 1e-6 and (digits):format(margin) or margin and "0" or "-"
    for _, option in ipairs(test.options or {}) do
      words[#words + 1] = option.name .. " " .. option.kind
      add_tests(words, option.tests, digits)
    end
  end
end

-- "verdict": kind and level; "margins": each test, too; "all": sentences and missing facts, too. Never places or order.
local function told(report, how)
  local list = {}
  for _, finding in ipairs(report.findings) do
    local words = { finding.rule, finding.about.kind, finding.about.name, finding.kind, finding.level, finding.cite }
    if how ~= "verdict" then add_tests(words, finding.tests, "%.7g") end
    if how == "all" then
      words[#words + 1] = finding.message
      for _, missing in ipairs(finding.missing) do words[#words + 1] = missing.fact end
    end
    list[#list + 1] = table.concat(words, " | ")
  end
  table.sort(list)
  return list
end

-- The two lists are the same; else the first that stands in one alone is told.
local function hold_list(now, before, what)
  if table.concat(now, "\n") == table.concat(before, "\n") then return end
  for i, line in ipairs(before) do
    if now[i] ~= line then lu.fail(("%s:\n  before: %s\n  now:    %s"):format(what, line, now[i])) end
  end
  lu.fail(what .. ": more is said: " .. now[#now])
end

local function hold(output, how, what)
  for i, report in ipairs(reports_of(output, #texts)) do
    lu.assertEquals(#report.problems, #plain[i].problems, what .. ", problems of design " .. i)
    hold_list(told(report, how), told(plain[i], how), what .. ", design " .. i)
  end
end

-- ---- a design written again ---------------------------------------------------------------------------------------

local function scalar(node)
  if node.plain and not node.text:find("[,%[%]{}:#\"'&*!|>%%@`]") then return node.text end
  return '"' .. node.text:gsub('[\\"]', "\\%0") .. '"'
end

-- The tree in one line. `change(node, key)` may give another node for it.
local function written(node, change, key)
  node = change and change(node, key) or node
  local parts = {}
  if node.items then
    for i, item in ipairs(node.items) do parts[i] = written(item, change, key) end
    return "[" .. table.concat(parts, ", ") .. "]"
  elseif node.keys then
    for i, inner in ipairs(node.keys) do parts[i] = inner .. ": " .. written(node.of[inner], change, inner) end
    return "{" .. table.concat(parts, ", ") .. "}"
  end
  return scalar(node)
end

local function all_written(change)
  local others = {}
  for i, text in ipairs(texts) do others[i] = written(tree.parse(text), change) .. "\n" end
  return others
end

local function shuffled(list)
  local other = table.move(list, 1, #list, 1, {})
  for i = #other, 2, -1 do
    local at = math.random(i)
    other[i], other[at] = other[at], other[i]
  end
  return other
end

-- Names of facts by what they are, over all kinds.
local quantities, lists = {}, {}
for _, kind in ipairs(model.kinds) do
  for _, row in ipairs(kind.rows) do
    if row.type == "QUANTITY" then quantities[row.name] = quantity.dimension(row.measure) end
    if row.type == "POINT" or row.type == "POINTS" then quantities[row.name] = quantity.dimension("length") end
    if row.type == "LIST" then lists[row.name] = true end
  end
end
quantities.raceway_size = nil

local other_units = {
  [quantity.dimension("length")] = "mm", [quantity.dimension("pressure")] = "kPa", [quantity.dimension("mass")] = "kg",
  [quantity.dimension("current")] = "mA", [quantity.dimension("voltage")] = "kV", [quantity.dimension("power")] = "W",
  [quantity.dimension("angle")] = "rad", [quantity.dimension("speed")] = "m/s", [quantity.dimension("time")] = "day",
}

local changed_units = 0
local function in_other_units(node, key)
  local dimension = node.text and quantities[key == "is" and "" or key]
  local unit = dimension and other_units[dimension]
  local number = unit and quantity.read(node.text, dimension)
  if not number then return nil end
  changed_units = changed_units + 1
  return { text = ("%.15g %s"):format(number / quantity.from(1, unit, dimension), unit), plain = true }
end

TestToldOtherwise = {}

function TestToldOtherwise:test_the_same_in_one_line() hold(batch(all_written(), { "marrow-bay" }), "all", "in one line") end

function TestToldOtherwise:test_keys_in_any_order()
  math.randomseed(11, 3)
  local others = all_written(function(node) return node.keys and { keys = shuffled(node.keys), of = node.of } end)
  hold(batch(others, { "marrow-bay" }), "all", "keys in another order")
end

-- A rule that asks whether any of a list is so stops at the first: it may meet the one that nobody told of before or after
-- that. So what is open may be known in another order, and the other way round; all else stays as it is.
local function hold_but_for_open(report, before, what)
  local kinds, count = {}, 0
  for _, finding in ipairs(before.findings) do
    kinds[finding.rule .. " of " .. finding.about.kind .. ":" .. finding.about.name] = finding.kind .. " " .. finding.level
  end
  for _, finding in ipairs(report.findings) do
    local key = finding.rule .. " of " .. finding.about.kind .. ":" .. finding.about.name
    local was = kinds[key]
    if was ~= finding.kind .. " " .. finding.level then
      count = count + 1
      if finding.kind ~= "open" and was ~= "open none" then lu.fail(("%s: %s was %s and is %s"):format(what, key, was, finding.kind)) end
    end
  end
  lu.assertEquals(#report.findings, #before.findings, what)
  return count
end

function TestToldOtherwise:test_lists_in_any_order()
  math.randomseed(11, 4)
  local others = all_written(function(node, key) return node.items and lists[key] and #node.items > 1 and { items = shuffled(node.items) } or nil end)
  local moved, of = 0, 0
  for i, report in ipairs(reports_of(batch(others, { "marrow-bay" }), #texts)) do
    moved = moved + hold_but_for_open(report, plain[i], "lists in another order, design " .. i)
    of = of + #report.findings
    if plain[i].counts.open == 0 then hold_list(told(report, "verdict"), told(plain[i], "verdict"), "design " .. i .. ", of which all is known") end
  end
  lu.assertTrue(moved * 200 < of, moved .. " of " .. of .. " verdicts hang on the order")
end

-- Modules and their rows, in which nobody has a first one.
function TestToldOtherwise:test_modules_in_any_order()
  math.randomseed(11, 5)
  local others = all_written(function(node, key) return (key == "modules" or key == "module_rows") and node.items and { items = shuffled(node.items) } or nil end)
  hold(batch(others, { "marrow-bay" }), "verdict", "modules in another order")
end

function TestToldOtherwise:test_other_units()
  local others = all_written(in_other_units)
  lu.assertTrue(changed_units > 100 * #texts, "amounts were told in other units: " .. changed_units)
  hold(batch(others, { "marrow-bay" }), "margins", "in other units")
end

-- ---- a fact forgotten ---------------------------------------------------------------------------------------------

-- Names of facts whose absence says nothing: no list, no thing, nothing that is assumed or worked out.
local tellable = {}
for _, kind in ipairs(model.kinds) do
  for _, row in ipairs(kind.rows) do
    if row.type ~= "LIST" and row.type ~= "ONE" and row.type ~= "INVERSE" then tellable[row.name] = true end
  end
end
for _, kind in ipairs(model.kinds) do
  for _, row in ipairs(kind.rows) do
    if row.absent then tellable[row.name] = nil end
  end
end
for _, name in ipairs({ "title", "catalogue", "permit_application_date" }) do tellable[name] = nil end

-- Maps in which facts stand, each once for each of its facts.
local function places_of(node, list)
  for _, key in ipairs(node.keys or {}) do
    if tellable[key] then list[#list + 1] = { node = node, key = key } end
    places_of(node.of[key], list)
  end
  for _, item in ipairs(node.items or {}) do places_of(item, list) end
  return list
end

TestForgotten = {}

-- Some facts of each design, one at a time: nothing may pass that did not pass before.
function TestForgotten:test_nothing_passes_for_want_of_a_fact()
  local EACH = 8
  local others, forgotten = {}, {}
  math.randomseed(11, 6)
  for i, text in ipairs(texts) do
    for _ = 1, EACH do
      local root = tree.parse(text)
      local places = places_of(root, {})
      local place = places[math.random(#places)]
      local kept = {}
      for _, key in ipairs(place.node.keys) do
        if key ~= place.key then kept[#kept + 1] = key end
      end
      place.node.keys = kept
      others[#others + 1], forgotten[#forgotten + 1] = written(root) .. "\n", { key = place.key, of = i }
    end
  end
  local read, opened = 0, 0
  for n, report in ipairs(reports_of(batch(others, { "marrow-bay" }), #others)) do
    local before, what = {}, forgotten[n]
    for _, finding in ipairs(plain[what.of].findings) do before[finding.rule .. " of " .. finding.about.kind .. ":" .. finding.about.name] = finding.kind end
    read = read + (#report.findings > 0 and 1 or 0)
    for _, finding in ipairs(report.findings) do
      local key = finding.rule .. " of " .. finding.about.kind .. ":" .. finding.about.name
      if finding.kind == "pass" and before[key] ~= "pass" then
        lu.fail(("design %d without %s: %s was %s and passes"):format(what.of, what.key, key, before[key] or "not there"))
      end
      if finding.kind == "open" and before[key] ~= "open" then opened = opened + 1 end
    end
  end
  lu.assertTrue(read > 0.9 * #others, read .. " of " .. #others .. " could be read")
  lu.assertTrue(opened > #others / 2, opened .. " findings were opened")
end

-- ---- rules and books ----------------------------------------------------------------------------------------------

-- A copy of rules/ that stands before it. `change(text, path)` makes each file's text anew.
local function copy_of(name, pattern, change)
  local copy, count = plumb.folder() .. "/" .. name, 0
  assert(os.execute(("mkdir -p '%s' && cp -R '%s/rules/.' '%s'"):format(copy, plumb.top, copy)))
  local pipe = assert(io.popen(("find '%s' -name '%s' -not -path '*/cases/*'"):format(copy, pattern)))
  for path in pipe:lines() do
    local text = plumb.read(path)
    local other = change(text)
    count = count + (other ~= text and 1 or 0)
    plumb.write(path, other)
  end
  pipe:close()
  return copy, count
end

TestBooks = {}

function TestBooks:test_other_units_to_show()
  local units = { inch = "mm", ft = "m", psf = "kPa", lbf = "kN", psi = "kPa", year = "day", sq_ft = "sq_m" }
  local copy, count = copy_of("units", "*.lua", function(text)
    return (text:gsub(", ([%a_]+)%)\n", function(unit) return units[unit] and ", " .. units[unit] .. ")\n" end))
  end)
  lu.assertTrue(count > 25, count .. " rules show other units")
  hold(batch(texts, { "marrow-bay" }, { "--jobs", "2", "--books", copy }), "margins", "shown in other units")
end

-- Books adopted in another order, their values and those of the codes told in another order, rules made anew on disk.
function TestBooks:test_books_and_rules_in_another_order()
  local function reversed(text, pattern)
    local head, items = "", {}
    for line in text:gmatch("[^\n]*\n") do
      if line:match(pattern) then items[#items + 1] = "" end
      if #items > 0 then items[#items] = items[#items] .. line else head = head .. line end
    end
    local other = {}
    for i = #items, 1, -1 do other[#other + 1] = items[i] end
    return head .. table.concat(other)
  end
  local copy, count = copy_of("order", "book.yaml", function(text)
    return (text:gsub("adopts:\n(.-)\nvalues:", function(list) return "adopts:\n" .. reversed(list .. "\n", "^  %- "):gsub("\n$", "") .. "\nvalues:" end))
  end)
  lu.assertTrue(count >= 3, count .. " towns adopt in another order")
  assert(os.execute(([[cd '%s' && for file in $(find . -name '*.lua' | sort -r); do mv "$file" "$file.moved" && cp "$file.moved" "$file" && rm "$file.moved"; done]]):format(copy)))
  local pipe = assert(io.popen("ls " .. copy .. "/codes/*/values.yaml"))
  for path in pipe:lines() do plumb.write(path, reversed(plumb.read(path), "^%l")) end
  pipe:close()
  hold(batch(texts, { "marrow-bay" }, { "--jobs", "2", "--books", copy }), "all", "books in another order")
end

function TestBooks:test_an_empty_book()
  local folder = plumb.folder() .. "/empty/hollow"
  assert(os.execute("mkdir -p '" .. folder .. "'"))
  plumb.write(folder .. "/book.yaml", "book: hollow\ntitle: Nothing\nmaintained_by: Nobody\nrole: authority\nscope: nothing\n")
  local output = batch(texts, { "marrow-bay", "hollow" }, { "--jobs", "2", "--books", plumb.folder() .. "/empty" })
  hold(output, "all", "with an empty book")
  -- Not even order or places move: apart from the list of books every line is the same.
  local function findings_of(text) return text:gsub('"books":%b[]', ""):gsub('"facts":%b[]', "") end
  lu.assertTrue(findings_of(output) == findings_of(plain_output), "an empty book moves nothing")
end

function TestBooks:test_any_number_of_workers()
  for _, jobs in ipairs({ 1, 3, 7 }) do
    lu.assertTrue(batch(texts, { "marrow-bay" }, { "--jobs", tostring(jobs) }) == plain_output, jobs .. " workers write the same bytes")
  end
end

TestLarge = {}

-- More things than a house has: the budget of a rule that looks at each of them grows with them.
function TestLarge:test_two_thousand_modules()
  local text = generate.design(3, 1, { seed = 3, care = 1, planes = { 4, 4 }, modules = { 2000, 2000 } })
  local report = reports_of(batch({ text }, { "marrow-bay" }), 1)[1]
  lu.assertEquals(#report.problems, 0, report.problems[1] and report.problems[1].message)
  lu.assertTrue(#report.findings > 5000)
end

local code = lu.LuaUnit.run()
plumb.clean()
os.exit(code)

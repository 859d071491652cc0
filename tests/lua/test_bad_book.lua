-- Rules that go wrong and books that do not add up: each is told at its place, nothing passes because of it,
-- and every other rule still runs.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

local HOUSE = "title: House\nproject: {permit_application_date: 2026-08-03}\nroof: {planes: [{name: south, layers: 1, covering: slate}]}\n"
local LIMITS = "layers_allowed: {kind: number, stricter: smaller, says: layers below an array, "
  .. 'entries: [{from: 2020-01-01, is: 1, cite: "Act 1"}]}\n'

local function make_folder(path) assert(os.execute("mkdir -p '" .. path .. "'")) end

-- Writes a book of rules, given as name → text of the file.
local function make_book(name, rules)
  local path = plumb.folder() .. "/books/" .. name
  os.execute("rm -rf '" .. path .. "'")
  make_folder(path)
  plumb.write(path .. "/book.yaml",
    ("book: %s\ntitle: Book %s\nmaintained_by: Desk\nrole: authority\nscope: roofs\n"):format(name, name))
  plumb.write(path .. "/values.yaml", LIMITS)
  for rule, text in pairs(rules) do plumb.write(path .. "/" .. rule .. ".lua", text) end
end

-- A rule whose check is the given text, from line 6 on.
local function rule(check)
  return 'return {\n  title = "Layers",\n  cite = "Act 1",\n  about = "roof_plane",\n  check = function(plane, book)\n'
    .. check .. "\n  end,\n}\n"
end

local GOOD = rule('shall.not_exceed("Layers", plane.layers, book.layers_allowed)')

-- The book `trial` over the house: a rule to look at, and a good one that must still pass.
local function judge(text)
  make_book("trial", { odd = text, good = GOOD })
  local report = plumb.check(HOUSE, { books = { "trial" }, directory = plumb.folder() .. "/books" })
  lu.assertEquals(plumb.find(report, "trial/good").kind, "pass")
  return report
end

-- A broken rule: one problem with its place and words, an open finding, exit 4.
local function broken(text, code, line, column, words)
  local report = judge(text)
  local problem = report.problems[1]
  lu.assertEquals(report.exit, 4)
  lu.assertEquals(#report.problems, 1)
  lu.assertStrContains(problem.message, words)
  lu.assertEquals(problem.code, code)
  lu.assertStrMatches(problem.place.file, ".*/trial/odd%.lua")
  lu.assertEquals({ problem.place.line, problem.place.column }, { line, column })
  lu.assertEquals(plumb.find(report, "trial/odd").kind, "open")
  lu.assertEquals(#report.findings, 2)
end

local function broken_check(check, code, words, line) broken(rule(check), code, line or 6, 0, words) end

TestRules = {}

function TestRules:test_what_is_no_lua()
  broken_check('shall.not_exceed("Layers", 1 2)', "rule-syntax", "')' expected near '2'")
  broken("return {\n", "rule-syntax", 2, 0, "near <eof>")
  broken("\27Lua", "rule-not-text", 0, 0, "not plain text")
  broken("return \0", "rule-not-text", 0, 0, "not plain text")
end

function TestRules:test_a_mark_before_the_text()
  local report = judge("\u{FEFF}" .. GOOD)
  lu.assertEquals({ report.exit, #report.problems, plumb.find(report, "trial/odd").kind }, { 0, 0, "pass" })
end

-- A rule that cannot be read is told; what editors and file systems keep beside one is none.
function TestRules:test_files_that_are_none()
  make_book("trial", { good = GOOD, [".odd"] = "no rule", ["._good"] = "\0\0" })
  local folder = plumb.folder() .. "/books"
  local function check() return plumb.check(HOUSE, { books = { "trial" }, directory = folder }) end
  lu.assertEquals({ check().exit, #check().findings }, { 0, 1 })
  for _, command in ipairs({ "ln -s nowhere '%s/trial/odd.lua'", "ln -sf /dev/zero '%s/trial/odd.lua'", "rm '%s/trial/odd.lua' && mkfifo '%s/trial/odd.lua'" }) do
    assert(os.execute(command:format(folder, folder)))
    local report = check()
    lu.assertEquals({ report.exit, #report.problems }, { 4, 1 }, command)
    lu.assertStrContains(report.problems[1].place.file, "trial/odd.lua")
    lu.assertEquals(plumb.find(report, "trial/odd").kind, "open")
    lu.assertEquals(plumb.find(report, "trial/good").kind, "pass")
  end
end

function TestRules:test_comparison_signs()
  broken(rule('shall.be("One layer", plane.layers == 1)'), "rule-equals", 6, 36, "say same(a, b)")
  broken(rule('shall.be("One layer", plane.layers ~= 1)'), "rule-equals", 6, 36, "say not same(a, b)")
end

function TestRules:test_endless_loops()
  broken_check("while true do end", "rule-budget", "budget of 2000000 instructions")
  broken_check("local function again() return again() end\nagain()", "rule-budget", "budget of", 6)
  broken("while true do end\nreturn {}\n", "rule-budget", 1, 0, "budget of")
end

-- Each module for itself is within the limit; what all take together is not.
function TestRules:test_much_work_for_each_of_many()
  local lines = { HOUSE, "module_models: [{name: Q, rated_power: 400 W}]\nmodules:\n" }
  for i = 1, 90 do lines[#lines + 1] = ("  - {name: m%d, plane: south, model: Q}\n"):format(i) end
  local function judged(loops)
    make_book("trial", { odd = rule(("for i = 1, %d do end\nshall.be('It ends', true)"):format(loops)):gsub("roof_plane", "module"), good = GOOD })
    return plumb.check(table.concat(lines), { books = { "trial" }, directory = plumb.folder() .. "/books" })
  end
  local function kinds(report)
    local counts = { pass = 0, open = 0 }
    for _, finding in ipairs(report.findings) do
      if finding.rule == "trial/odd" then counts[finding.kind] = counts[finding.kind] + 1 end
    end
    return counts
  end
  local report = judged(1000000)
  lu.assertEquals(report.exit, 0)
  lu.assertEquals(kinds(report), { pass = 90, open = 0 })
  report = judged(1900000)
  lu.assertEquals(report.exit, 4)
  lu.assertEquals(#report.problems, 1)
  lu.assertEquals(report.problems[1].code, "rule-budget")
  lu.assertStrContains(report.problems[1].message, "for all things together")
  local counts = kinds(report)
  lu.assertEquals(counts.pass + counts.open, 90)
  lu.assertTrue(counts.pass > 40 and counts.open > 20, "what was judged stands, the rest is open")
  lu.assertEquals(plumb.find(report, "trial/good").kind, "pass")
end

function TestRules:test_endless_memory()
  broken_check('local s = "x"\nwhile true do s = format("%s%s", s, s) end', "rule-memory", "too large", 7)
  broken_check("local function deep() return 1 + deep() end\ndeep()", "rule-memory", "too large")
  -- Where C went too deep cannot be told to the line: the check is named where it begins.
  broken_check("local function sorting() table.sort({2, 1}, sorting) end\nsorting()", "rule-error", "C stack overflow", 5)
end

function TestRules:test_names_that_are_none()
  broken_check('shall.not_exceed("Layers", plane.layrs, 1)', "rule-error", "a roof_plane has no 'layrs'; did you mean 'layers'?")
  broken_check('shall.not_exceed("Layers", plane.layers, book.layers_alowed)', "rule-error",
    "'layers_alowed'; did you mean 'layers_allowed'?")
  broken_check('shal.be("so", true)', "rule-error", "there is no 'shal' here; did you mean 'shall'?")
  broken_check('shall.not_exced("Layers", 1, 1)', "rule-error", "there is no 'not_exced' here; did you mean 'not_exceed'?")
  broken_check('shall.be("Slate", plane.covering:is("slat"))', "rule-error", "'slat' is no word for covering; it can be: composition shingle")
end

function TestRules:test_unlike_quantities()
  broken_check('shall.not_exceed("Sum", 1 * A + 2 * V, 3 * A)', "rule-error", "a current and a voltage cannot be added")
  broken_check('shall.not_exceed("Sum", 1 * A, 3 * V)', "rule-error", "a current and a voltage cannot be compared")
  broken_check('shall.not_exceed("Sum", 1 * A, 3)', "rule-error", "cannot be compared with a number")
  broken_check('shall.be("Less", 1 * A < 2 * V)', "rule-error", "a current and a voltage cannot be compared")
  broken_check('shall.not_exceed("Sum", 1 / 0, 2)', "rule-error", "not finite")
end

function TestRules:test_a_check_that_records_nothing()
  broken_check("local x = plane.layers", "rule-error", "the check recorded nothing", 5)
  broken_check('if plane.layers > 5 then shall.be("few", false) end', "rule-error", "the check recorded nothing", 5)
end

function TestRules:test_a_rule_that_throws()
  broken_check("local x\nshall.be('so', x.y)", "rule-error", "nil value (local 'x')", 7)
  broken_check('error("stop")', "rule-error", "there is no 'error' here")
  broken_check('pcall(function() end)', "rule-error", "there is no 'pcall' here")
  broken_check("count = 1", "rule-error", "'count' cannot be set")
end

function TestRules:test_a_pass_before_the_mistake_does_not_count()
  broken_check("shall.be('so', true)\nlocal x = nil + 1", "rule-error", "arithmetic on a nil value", 7)
end

function TestRules:test_cards()
  local card = 'return { title = "T", cite = "Act 1", about = "%s"%s }\n'
  local check = ', check = function() shall.be("so", true) end'
  broken("local x = 1\n", "rule-card", 0, 0, "returns one table, its card")
  broken(card:format("rof_plane", check), "rule-card", 0, 0, "no such kind of thing")
  broken(card:format("roof_plane", ""), "rule-card", 0, 0, "the card needs check = function(thing, book, design)")
  broken(card:format("roof_plane", check .. ", chek = 1"), "rule-card", 0, 0, "something else, too")
  broken('return { cite = "Act 1", about = "roof_plane"' .. check .. " }\n", "rule-card", 0, 0, 'the card needs title = "…"')
  broken(card:format("roof_plane", check .. ", applies = function() return 1 end"), "rule-error", 1, 0,
    "applies() answers true or false")
end

TestOptions = {}

local function options(a, b, before)
  return rule((before or "") .. "shall.meet_one_of {\n  { 'first', function()\n" .. a .. "\n  end },\n  { 'second', function()\n" .. b
    .. "\n  end },\n}")
end

local AGE, DECK = "shall.not_exceed('Age', plane.age, 3 * year)", "shall.be('Plywood', plane.deck:is('plywood'))"
local YES, NO = "shall.be('so', true)", "shall.be('so', false)"

-- A group that runs to its end: the finding's kind and, where it is open, the facts that it asks for.
local function ends(text, kind, exit, missing)
  local report = judge(text)
  local finding = plumb.find(report, "trial/odd")
  local facts = {}
  for i, one in ipairs(finding.missing) do facts[i] = one.fact end
  lu.assertEquals({ finding.kind, report.exit, #report.problems }, { kind, exit, 0 })
  if missing then lu.assertEquals(facts, missing) end
  return finding
end

function TestOptions:test_a_fact_is_missing_in_each()
  local finding = ends(options(AGE, DECK), "open", 2, { "roof_plane south: age", "roof_plane south: deck" })
  lu.assertEquals(finding.missing[1].place.line, 3)
  ends(options(AGE, AGE), "open", 2, { "roof_plane south: age" })
end

function TestOptions:test_a_fact_is_missing_in_one()
  ends(options(AGE, YES), "pass", 0)
  ends(options(YES, AGE), "pass", 0)
  ends(options(AGE, NO), "open", 2, { "roof_plane south: age" })
  ends(options(NO, NO), "fail", 1)
end

local function nested(a, b) return "shall.meet_one_of { { 'inner a', function() " .. a .. " end }, { 'inner b', function() " .. b .. " end } }" end

function TestOptions:test_a_fact_is_missing_in_nested_ones()
  ends(options(nested(AGE, NO), DECK), "open", 2, { "roof_plane south: age", "roof_plane south: deck" })
  ends(options(nested(AGE, YES), NO), "pass", 0)
  ends(options(nested(nested(AGE, NO), NO), NO), "open", 2, { "roof_plane south: age" })
  ends(options(nested(NO, NO), NO), "fail", 1)
end

-- Whatever passed before: a rule that breaks in one option has told nothing.
function TestOptions:test_what_breaks_in_an_option()
  broken(options(YES, "local x = nil + 1"), "rule-error", 11, 0, "arithmetic on a nil value")
  broken(options("local x = nil + 1", YES), "rule-error", 8, 0, "arithmetic on a nil value")
  broken(options(YES, "while true do end"), "rule-budget", 11, 0, "budget of")
  broken(options(YES, "local s = 'x'\nwhile true do s = format('%s%s', s, s) end"), "rule-memory", 12, 0, "too large")
  broken(options(nested(YES, "local s = 'x' while true do s = format('%s%s', s, s) end"), YES), "rule-memory", 8, 0,
    "too large")
  broken(options(YES, "local x = 1"), "rule-error", 6, 0, "the option 'second' recorded nothing")
  broken(options(YES, "should.be('so', true)"), "rule-error", 11, 0, "'should' does not stand inside meet_one_of")
  broken_check("shall.meet_one_of { { 'only', function() shall.be('so', true) end } }", "rule-error", "two to twenty options")
end

TestOverTheTown = {}

-- Broken rules laid over the town: all of the town's findings stand as they were.
function TestOverTheTown:test_the_town_is_judged_as_before()
  make_book("broken", {
    syntax = "return {",
    equals = rule("shall.be('so', plane.layers == 1)"),
    loop = rule("while true do end"),
    memory = rule("local s = 'x'\nwhile true do s = format('%s%s', s, s) end"),
    inside = options(YES, "local s = 'x'\nwhile true do s = format('%s%s', s, s) end"),
    misspelt = rule("shall.not_exceed('Layers', plane.layrs, 1)"),
    unlike = rule("shall.not_exceed('Sum', 1 * A + 2 * V, 3 * A)"),
    nothing = rule("local x = 1"),
    throws = rule("local x = nil + 1"),
  })
  local house = plumb.sample("failing")
  local alone = plumb.check(house, { books = { "marrow-bay" } })
  local both = plumb.check(house, { books = { "marrow-bay", "broken" }, directory = plumb.folder() .. "/books" })
  lu.assertEquals({ alone.exit, both.exit }, { 1, 4 })
  lu.assertEquals(#both.problems, 9)
  for i, name in ipairs { "equals", "inside", "loop", "memory", "misspelt", "nothing", "syntax", "throws", "unlike" } do
    lu.assertStrContains(both.problems[i].place.file, "/broken/" .. name .. ".lua")
    lu.assertTrue(both.problems[i].place.line > 0)
  end
  -- Two that cannot be read give one finding each, seven one for each of two planes.
  lu.assertEquals(#both.findings, #alone.findings + 2 + 7 * 2)
  lu.assertEquals(both.counts.open, alone.counts.open + 2 + 7 * 2)
  for _, kind in ipairs { "fail", "pass", "review", "notApplicable" } do
    lu.assertEquals(both.counts[kind], alone.counts[kind])
  end
  for i, finding in ipairs(alone.findings) do
    lu.assertEquals(both.findings[i].rule, finding.rule)
    lu.assertEquals(both.findings[i].message, finding.message)
  end
end

-- What a rule did to its memory must not show in the next run of it, or in another design.
function TestOverTheTown:test_a_broken_rule_breaks_the_same_way_twice()
  make_book("trial", { odd = rule("local s = 'x'\nwhile true do s = format('%s%s', s, s) end"), good = GOOD })
  local path = plumb.folder() .. "/house.yaml"
  plumb.write(path, HOUSE)
  local output, code = plumb.run { "check", path, path, "--book", "trial", "--books", plumb.folder() .. "/books", "-f", "json" }
  local reports = {}
  for text in output:gmatch("%b{}") do reports[#reports + 1] = text end
  lu.assertEquals({ code, #reports }, { 4, 2 })
  lu.assertEquals(reports[1], reports[2])
end

TestBooks = {}

-- Resolves the town or company of tests/books/wrong, and compares all problems as "FILE:LINE:COLUMN CODE", with
-- the file's last two parts.
local function resolve(books, on, problems)
  local report = plumb.check(HOUSE, { books = books, on = on, directory = plumb.top .. "/tests/books/wrong" })
  local lines = {}
  for i, problem in ipairs(report.problems) do
    local place = problem.place
    if place == nil or place == cjson.null then
      lines[i] = problem.code
    else
      lines[i] = ("%s:%d:%d %s"):format(place.file:match("[^/]*/[^/]*$"), place.line, place.column, problem.code)
    end
  end
  lu.assertEquals(lines, problems)
  lu.assertEquals(report.exit, 3)
  return report
end

local function says(report, n, words, other)
  lu.assertStrContains(report.problems[n].message, words)
  if other then
    local place = report.problems[n].other
    lu.assertEquals(("%s:%d"):format(place.file:match("[^/]*/[^/]*$"), place.line), other)
  end
end

local function holds(report, rule_id) return plumb.find(report, rule_id).kind == "review" end

function TestBooks:test_a_book_that_adopts_itself()
  local report = resolve({ "itself" }, "2024-01-01", { "itself/book.yaml:7:12 adopts-itself" })
  says(report, 1, "itself adopts itself")
  lu.assertTrue(holds(report, "roofcode/ridge")) -- what it adopts besides still runs
end

function TestBooks:test_a_circle()
  local report = resolve({ "round-a" }, "2024-01-01", { "round-c/book.yaml:6:10 circle" })
  says(report, 1, "round-a adopts round-b, which adopts round-a again", "round-a/book.yaml:6")
end

function TestBooks:test_one_book_at_two_editions()
  local report = resolve({ "two-editions" }, "2024-01-01", { "old-state/book.yaml:6:10 editions-two" })
  says(report, 1, "2018 here, 2021 there", "two-editions/book.yaml:8")
end

function TestBooks:test_an_unknown_edition()
  local report = resolve({ "edition-unknown" }, "2024-01-01", { "edition-unknown/book.yaml:6:10 edition-unknown" })
  says(report, 1, "its editions are 2018, 2021")
  lu.assertStrContains(report.problems[1].example, "edition: 2021")
  says(resolve({ "roofcode@2024" }, "2024-01-01", { "edition-unknown" }), 1, "no edition 2024")
  says(resolve({ "roofcode" }, "2024-01-01", { "edition-missing" }), 1, "2018, 2021")
end

function TestBooks:test_misspelt_values_and_rules()
  local report = resolve({ "misspelt" }, "2024-01-01", {
    "misspelt/book.yaml:8:3 value-unknown", "misspelt/book.yaml:9:3 value-unknown",
    "misspelt/book.yaml:11:5 rule-unknown", "misspelt/book.yaml:12:5 rule-unknown",
    "misspelt/book.yaml:13:5 rule-unknown", "misspelt/book.yaml:15:5 restores-nothing",
  })
  says(report, 1, "ground_snw; did you mean ground_snow?")
  says(report, 3, "did you mean roofcode/second-pathway?")
  lu.assertTrue(holds(report, "roofcode/ridge"))
end

function TestBooks:test_rivals_without_order()
  local report = resolve({ "undecided" }, "2024-01-01", { "right/book.yaml:7:24 rivals", "right/book.yaml:9:12 rivals" })
  says(report, 1, "left and right both give the value ground_snow", "left/book.yaml:7")
  says(report, 2, "neither adopts the other", "left/book.yaml:8")
end

function TestBooks:test_amendments_written_for_another_edition()
  local report = resolve({ "left-behind" }, "2024-01-01", {
    "left-behind/book.yaml:10:19 edition-other", "left-behind/book.yaml:11:20 edition-missing",
    "left-behind/book.yaml:14:5 edition-other", "left-behind/book.yaml:16:5 edition-other",
  })
  says(report, 1, "written for edition 2018 of roofcode, but edition 2021 is in force on 2024-01-01", "left-behind/book.yaml:8")
  lu.assertTrue(holds(report, "roofcode/second-pathway")) -- the deletion is not taken over
end

function TestBooks:test_two_that_begin_on_one_day()
  local report = resolve({ "twice" }, "2024-01-01", {
    "twice/book.yaml:6:61 from-twice", "twice/book.yaml:10:7 from-twice", "twice/book.yaml:14:5 from-twice",
    "twice/book.yaml:6:61 editions-two",
  })
  says(report, 2, "two entries of ground_snow", "twice/book.yaml:9")
end

-- As reports for people write it, it would match no finding.
function TestBooks:test_a_waiver_names_its_thing_as_reports_for_programs_do()
  make_book("waiving", { good = GOOD })
  local path = plumb.folder() .. "/books/waiving/book.yaml"
  plumb.write(path, plumb.read(path) .. "waivers:\n  - {rule: waiving/good, about: roof_plane south, reason: seen, granted_by: Official, permit: B-1, from: 2026-01-01, until: 2026-12-31}\n")
  local report = plumb.check(HOUSE, { books = { "waiving" }, directory = plumb.folder() .. "/books" })
  local problem = report.problems[1]
  lu.assertEquals({ report.exit, #report.problems, problem.code, problem.place.line, problem.place.column },
    { 3, 1, "about-bad", 7, 33 })
  lu.assertEquals(problem.example, 'about: "roof_plane:south"')
end

-- 25 for 25 % would loosen a hundred times over.
function TestBooks:test_a_share_without_its_sign()
  make_book("share", { good = GOOD })
  local path = plumb.folder() .. "/books/share/book.yaml"
  local head = plumb.read(path) .. "adopts: [{book: irc, edition: 2021, from: 2026-01-01, cite: Act 1}]\n"
  local function told(number)
    plumb.write(path, head .. "values: {ridge_coverage_limit: [{from: 2026-01-01, edition: 2021, is: " .. number .. ", cite: Act 2}]}\n")
    return plumb.check(HOUSE, { books = { "share" }, directory = plumb.folder() .. "/books" }).problems
  end
  local bare = told("25")[1]
  lu.assertEquals({ bare.code, bare.place.line, bare.example }, { "share-bare", 7, "is: 25 %" })
  lu.assertStrContains(bare.message, "irc writes as 33 %: 25 without % is a hundred times as much")
  for _, right in ipairs { "25 %", "0.25", "1", "125 %" } do lu.assertEquals(told(right), {}, right) end
end

-- A company's book without its town, before it, and a name that is the beginning of others.
function TestBooks:test_a_company_is_stacked_on_its_town()
  make_book("ours", { good = GOOD })
  local path = plumb.folder() .. "/books/ours/book.yaml"
  local head = plumb.read(path):gsub("authority", "company")
  local function told(books, name)
    plumb.write(path, head .. "values: {" .. name .. ": [{from: 2026-01-01, is: 40 in, cite: Ours 1}]}\n")
    local report = plumb.check(HOUSE, { books = books, directory = plumb.folder() .. "/books" })
    return report.problems[1] or {}
  end
  local alone = told({ "ours" }, "ridge_setback_small")
  lu.assertStrContains(alone.message, "declares a value ridge_setback_small; the book that adopts its code is named before")
  lu.assertEquals(alone.example, "--book marrow-bay --book ours")
  local before = told({ "ours", "marrow-bay" }, "ridge_setback_small")
  lu.assertEquals({ before.code, before.example }, { "company-below", "--book marrow-bay --book ours" })
  lu.assertStrContains(before.message, "marrow-bay is named after it and decides ridge_setback_small (36 in)")
  local rivals = told({ "ours", "marrow-bay" }, "ridge_setback_large")
  lu.assertEquals({ rivals.code, rivals.example }, { "rivals", "--book marrow-bay --book ours" })
  lu.assertNil(told({ "marrow-bay", "ours" }, "ridge_setback_small").code)
  local beginning = told({ "marrow-bay", "ours" }, "ridge_setback")
  lu.assertStrContains(beginning.message, "ridge_setback; there is: ridge_setback_large, ridge_setback_small")
  lu.assertNil(beginning.example)
end

function TestBooks:test_a_company_that_loosens()
  local report = plumb.check(HOUSE, { books = { "town", "loose" }, on = "2024-01-01", directory = plumb.top .. "/tests/books/wrong" })
  lu.assertEquals(report.exit, 3)
  for i, line in ipairs { 7, 8, 9, 10, 11, 12, 13, 15, 17 } do
    lu.assertStrMatches(report.problems[i].place.file, ".*/loose/book%.yaml")
    lu.assertEquals({ report.problems[i].code, report.problems[i].place.line }, { "company-loosens", line })
  end
  says(report, 1, "may only tighten, so ridge_setback of roofcode (18 in) stands", "roofcode/values.yaml:1")
  lu.assertEquals(report.problems[1].example, "ridge_setback: 18 in, or larger")
  lu.assertTrue(holds(report, "roofcode/ridge"))
end

function TestBooks:test_a_book_that_is_not_there()
  local path = plumb.folder() .. "/house.yaml"
  plumb.write(path, HOUSE)
  local function look(name)
    local output, code = plumb.run { "check", path, "--format", "json", "--book", name }
    lu.assertEquals(code, 3)
    local report = cjson.decode(output)
    lu.assertEquals({ #report.problems, report.problems[1].code }, { 1, "book-unknown" })
    return report.problems[1].message
  end
  lu.assertEquals(look("marow-bay"), "there is no book marow-bay; did you mean marrow-bay?")
  lu.assertStrContains(look("zanzibar"), "there is: asce, ")
  lu.assertStrContains(look("./zanzibar"), "no book.yaml in the folder ./zanzibar")
  resolve({ "book-unknown" }, "2024-01-01", { "book-unknown/book.yaml:6:10 book-unknown" })
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result == 0)

-- Designs that cannot be read, from an empty file to a file that is none: each is told with its place, what
-- would be right, and exit code 3.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

local HEAD = "title: House\nproject: {permit_application_date: 2026-08-03}\n"

local function path_of(name) return plumb.folder() .. "/" .. name end

-- Checks files by their paths and returns the reports in their order, and the exit code.
local function check_files(paths, ...)
  local arguments = { "check", "--format", "json", "--book", "marrow-bay", ... }
  for _, path in ipairs(paths) do arguments[#arguments + 1] = path end
  local output, code, errors = plumb.run(arguments)
  local reports = {}
  for text in output:gmatch("%b{}") do reports[#reports + 1] = cjson.decode(text) end
  return reports, code, errors
end

local function place_of(problem)
  local place = problem.place
  if place == nil or place == cjson.null then return "" end
  local file = place.file:match("[^/]*$")
  if place.line == 0 then return file end
  return ("%s:%d:%d"):format(file, place.line, place.column)
end

local function told(report)
  local lines = {}
  for i, problem in ipairs(report.problems) do lines[i] = place_of(problem) .. " " .. problem.code end
  return lines
end

-- A design that is refused: all problems as "PLACE CODE", and what the first one says and suggests.
local function refused(text, problems, words, example)
  plumb.write(path_of("bad.yaml"), text)
  local reports, code = check_files({ path_of("bad.yaml") })
  local report = reports[1]
  lu.assertEquals(code, 3)
  lu.assertEquals(#reports, 1)
  if type(problems) == "string" then problems = { problems } end
  for i, line in ipairs(problems) do
    if not line:find("^[%w-]*%.yaml") then problems[i] = "bad.yaml" .. (line:find("^%d") and ":" or " ") .. line end
  end
  lu.assertEquals(told(report), problems)
  lu.assertEquals(report.findings, {})
  if words then lu.assertStrContains(report.problems[1].message, words) end
  if example then lu.assertEquals(report.problems[1].example, example) end
  return report
end

TestFiles = {}

-- The book that is misspelt is told with the design that cannot be read, not after it.
function TestFiles:test_a_misspelt_book_is_told_with_a_bad_design()
  plumb.write(path_of("bad.yaml"), "title: House\nroof: {shape: gambel}\n")
  local function names(book)
    local output, code = plumb.run({ "check", path_of("bad.yaml"), "--book", book, "--format", "json" })
    return told(cjson.decode(output)), code, cjson.decode(output).problems[2]
  end
  lu.assertEquals({ names("marrow-bay") }, { { "bad.yaml:2:15 word" }, 3 })
  local lines, code, book = names("marow-bay")
  lu.assertEquals({ lines, code }, { { "bad.yaml:2:15 word", " book-unknown" }, 3 })
  lu.assertStrContains(book.message, "did you mean marrow-bay?")
  lu.assertStrContains(select(3, names("gull-haven")).message, "--books DIR says where others lie")
end

function TestFiles:test_an_empty_file()
  refused("", "empty", "the file says nothing", "title: Quill Hollow house")
  refused("# only a comment\n\n", "empty", "the file says nothing")
  refused("---\n", "empty", "the file says nothing")
end

function TestFiles:test_what_is_no_text()
  local bytes = {}
  for i = 0, 255 do bytes[i + 1] = string.char(i) end
  refused(table.concat(bytes):rep(8), "not-text", "not a text file")
  refused("title: Ho\0use\n", "1:10 nul-character", "U+0000")
  refused("title: Ho\7use\n", "1:10 control-character", "U+0007 cannot stand in the file; remove it")
  refused("title: H\u{f4}\u{202E}use\n", "1:10 control-character", "turns the direction")
  refused("title: Hos\xe9\n", "1:11 not-utf-8", "save the file as UTF-8")
  refused("\xff\xfet\0i\0", "not-utf-8", "UTF-16")
end

function TestFiles:test_a_file_of_2_MiB()
  refused("# " .. ("x"):rep(2 << 20) .. "\n", "file-large", "larger than 1024 KiB")
end

function TestFiles:test_ten_thousand_brackets()
  refused("title: " .. ("["):rep(10000), "1:39 too-deep", "more than 32 deep")
  local lines = {}
  for i = 0, 199 do lines[i + 1] = (" "):rep(i) .. "a:\n" end
  refused(table.concat(lines), "33:33 too-deep", "more than 32 deep")
end

function TestFiles:test_aliases()
  refused("a: &a [x, x]\nb: [*a, *a]\n", { "1:4 anchor", "2:5 alias", "2:9 alias" }, "write each value out")
  refused("a: &a [*a]\n", { "1:4 anchor", "1:8 alias" })
  local bomb = { "a0: &a0 [x, x]\n" }
  for i = 1, 30 do bomb[i + 1] = ("a%d: &a%d [*a%d, *a%d]\n"):format(i, i, i - 1, i - 1) end
  local report = refused(table.concat(bomb), (function()
    local lines = { "1:5 anchor" }
    for i = 1, 7 do
      if #lines < 20 then lines[#lines + 1] = (i + 1) .. ":5 anchor" end
      if #lines < 20 then lines[#lines + 1] = (i + 1) .. ":" .. 10 .. " alias" end
      if #lines < 20 then lines[#lines + 1] = (i + 1) .. ":" .. 15 .. " alias" end
    end
    lines[#lines + 1] = "too-many-problems"
    return lines
  end)())
  lu.assertEquals(#report.problems, 21)
end

function TestFiles:test_duplicate_keys()
  local report = refused(HEAD .. "title: Second\n", "3:1 duplicate-key", "a second time")
  lu.assertEquals({ report.problems[1].other.line, report.problems[1].other.column }, { 1, 1 })
end

function TestFiles:test_tabs()
  refused("title: House\nsite:\n\texposure: C\n", "3:1 tab", "a tab cannot indent; use spaces")
end

function TestFiles:test_what_is_no_mapping()
  refused("- a\n- b\n", "1:1 node-type", "a block of keys is needed here, not a list", "title: Quill Hollow house")
  refused("hello\n", "1:1 node-type", "not a single value")
end

function TestFiles:test_slips_of_the_pen()
  refused("title:House\nsite: {exposure: C}\n", "1:1 space-missing", "after the colon")
  refused("title: House: big\n", "1:13 colon-in-text", "in quotes")
  refused('title: "House\nproject: {owner: b}\n', "1:8 quote-not-closed", "never closed")
  local report = refused("title: House\ncatalogue: [modules\nproject: {permit_number: 1}\n", "3:8 bracket-not-closed")
  lu.assertEquals(report.problems[1].other.line, 2)
  refused(HEAD .. "---\ntitle: Other\n", "3:1 second-document", "a file holds one")
end

function TestFiles:test_what_is_no_file()
  os.execute("mkdir -p '" .. path_of("folder.yaml") .. "' && mkfifo '" .. path_of("pipe.yaml") .. "'")
  local reports, code = check_files({ path_of("folder.yaml"), path_of("pipe.yaml"), path_of("gone.yaml"), "/dev/null" })
  lu.assertEquals(code, 3)
  lu.assertEquals(told(reports[1]), { "folder.yaml file-directory" })
  lu.assertEquals(told(reports[2]), { "pipe.yaml file-special" }) -- refused, not waited for
  lu.assertEquals(told(reports[3]), { "gone.yaml file-missing" })
  lu.assertEquals(told(reports[4]), { "null file-special" })
end

-- Root may read everything, so the test gives up its rights where it has them.
function TestFiles:test_a_file_that_may_not_be_read()
  local path, out = path_of("locked.yaml"), path_of("locked.json")
  plumb.write(path, HEAD)
  os.execute(("chmod 711 '%s' && chmod 0 '%s'"):format(plumb.folder(), path))
  local is_root = io.popen("id -u"):read("l") == "0"
  local drop = is_root and "setpriv --reuid=65534 --regid=65534 --clear-groups " or ""
  if not os.execute(drop .. "test -x '" .. plumb.program .. "'") then
    lu.skip("another user cannot reach the program here")
  end
  local command = "%s'%s' check '%s' --format json --book marrow-bay --on 2026-08-03 >'%s' 2>/dev/null"
  local _, _, code = os.execute(command:format(drop, plumb.program, path, out))
  lu.assertEquals(code, 3)
  local report = cjson.decode(plumb.read(out))
  lu.assertEquals(report.problems[1].code, "file-unreadable")
  lu.assertStrContains(report.problems[1].message, "Permission denied")
  lu.assertEquals(place_of(report.problems[1]), "locked.yaml")
end

TestFacts = {}

function TestFacts:test_unknown_keys()
  refused(HEAD .. "site: {exposre: C}\n", "3:8 unknown-key", "no fact of site called 'exposre'; did you mean 'exposure'?")
  refused(HEAD .. "sites: {exposure: C}\n", "3:1 unknown-key", "did you mean 'site'?")
  refused(HEAD .. "site: {Exposure: C}\n", "3:8 unknown-key", "did you mean 'exposure'?")
  refused(HEAD .. "site: {frobnication: C}\n", "3:8 unknown-key", "there is: exposure, elevation, risk_category")
end

function TestFacts:test_unknown_words()
  refused(HEAD .. "building: {enclosure: enclsed}\n", "3:23 word", "did you mean 'enclosed'?")
  refused(HEAD .. "site: {exposure: E}\n", "3:18 word", "there is: B, C, D")
  refused(HEAD .. "building: {heated: maybe}\n", "3:20 yes-or-no", "yes or no", "heated: yes")
end

function TestFacts:test_units()
  refused(HEAD .. "site: {elevation: 40 V}\n", "3:22 unit-wrong", '"40 V" is a voltage; a length is needed', "elevation: 350 ft")
  refused(HEAD .. "site: {elevation: 40}\n", "3:19 unit-missing", '"40" has no unit; a length is needed, such as 18 in; units: in, ft')
  refused(HEAD .. "site: {elevation: 40 furlong}\n", "3:22 unit-unknown", '"furlong" is no unit known here')
  refused(HEAD .. "roof: {planes: [{name: s, slope: 20}]}\n", "3:34 unit-missing", "or a slope as 4/12", "slope: 4/12")
  refused(HEAD .. "site: {design_low_temperature: -10 deg}\n", "3:36 unit-wrong", "is an angle; a temperature is needed")
  refused(HEAD .. "building: {mean_roof_height: '14,5 m'}\n", "3:31 number-bad", "write it with a point")
end

function TestFacts:test_numbers_that_are_none()
  refused(HEAD .. "site: {elevation: nan ft}\n", "3:19 number-bad", "not a number")
  refused(HEAD .. "site: {elevation: .nan}\n", "3:19 number-bad", "not a number")
  refused(HEAD .. "site: {elevation: inf ft}\n", "3:19 number-bad", "not a finite number")
  refused(HEAD .. "site: {elevation: -inf ft}\n", "3:19 number-bad", "not a finite number")
  refused(HEAD .. "site: {elevation: 1e999 ft}\n", "3:19 range", "too large or too small")
  refused(HEAD .. "building: {stories: .inf}\n", "3:21 count", "a whole number is needed", "stories: 2")
  refused(HEAD .. "building: {stories: 1.5}\n", "3:22 count", "a whole number is needed")
  refused(HEAD .. "site: {elevation: -40000 ft}\n", "3:19 range", "believable values run from -300 to 15000 ft")
end

function TestFacts:test_a_quantity_of_400_digits()
  local report = refused(HEAD .. "site: {elevation: " .. ("9"):rep(400) .. " ft}\n", "3:19 number-bad", "too long")
  lu.assertTrue(#report.problems[1].message < 300) -- the digits are not all said again
end

function TestFacts:test_dates()
  refused("project: {permit_application_date: 2026-13-03}\n", "1:36 date", "no day of the calendar")
  refused("project: {permit_application_date: 8/3/2026}\n", "1:36 date", "write year-month-day",
    "permit_application_date: 2026-08-01")
end

function TestFacts:test_shapes()
  refused(HEAD .. "site: [1, 2]\n", "3:7 node-type", "a block of keys is needed here, not a list")
  refused(HEAD .. "site: windy\n", "3:7 node-type", "a block of keys is needed here, not a single value")
  refused(HEAD .. "roof: {planes: {name: south}}\n", "3:16 node-type", "a list is needed here, not a block of keys")
  refused(HEAD .. "strings: one\n", "3:10 node-type", "a list is needed here, not a single value")
  refused(HEAD .. "building: {stories: [1]}\n", "3:21 node-type", "a single value is needed here, not a list")
  refused(HEAD .. "site: {exposure: {a: b}}\n", { "3:19 unknown-key", "3:18 value-missing" }, "there is: is, from")
end

function TestFacts:test_names()
  local south = "roof: {planes: [{name: south}, {name: %s}]}\n"
  refused(HEAD .. south:format("so/uth"), "3:39 name", "no '/' or '|', unlike 'so/uth'")
  refused(HEAD .. south:format("so|uth"), "3:39 name", "no '/' or '|'")
  refused(HEAD .. south:format(("n"):rep(81)), "3:39 name", "at most 80 letters")
  refused(HEAD .. south:format(("é"):rep(41)), "3:39 name", "one with an accent counts as two or more")
  refused(HEAD .. south:format("''"), "3:39 name", "needs a name of its own")
  refused(HEAD .. "roof: {planes: [{slope: 4/12}]}\n", "3:17 name", "each roof_plane needs a name of its own")
  local report = refused(HEAD .. south:format("south"), "3:32 name-twice", "there is a roof_plane 'south' already")
  lu.assertEquals(report.problems[1].other.column, 17)
end

function TestFacts:test_references()
  local planes = HEAD .. "roof: {planes: [{name: south}, {name: north}]}\n"
  local row = planes .. "module_rows: [{name: low, plane: %s, columns: 2, rows: 1}]\n"
  refused(row:format("suoth"), "4:34 unknown-name", "there is no roof_plane 'suoth'; did you mean 'south'?")
  refused(row:format("garage"), "4:34 unknown-name", "there is no roof_plane 'garage'; there is: south, north")
  refused(HEAD .. "module_rows: [{name: low, model: Q-1, columns: 2}]\n", "3:34 unknown-name",
    "name the catalogue file that holds it", "catalogue: [modules, inverters]")
end

function TestFacts:test_catalogues()
  refused(HEAD .. "catalogue: [../secrets]\n", "3:13 catalogue-name", "without folder or ending",
    "catalogue: [modules, inverters]")
  refused(HEAD .. "catalogue: [modules, a/b]\n", "3:22 catalogue-name")
  refused(HEAD .. "catalogue: [/etc/passwd]\n", "3:13 catalogue-name")
  refused(HEAD .. "catalogue: [.hidden]\n", "3:13 catalogue-name")
  refused(HEAD .. "catalogue: [moduls]\n", "3:13 catalogue-missing", "did you mean 'modules'?")
  refused(HEAD .. "catalogue: [inverters.yaml]\n", "3:13 catalogue-name", "without folder or ending", "catalogue: [inverters]")
  -- What the missing one may hold is not told as well.
  refused(HEAD .. "catalogue: [moduls]\nmodules: [{name: m1, model: Quillon Q440}]\n", "3:13 catalogue-missing", "did you mean 'modules'?")
  refused(HEAD .. "catalogue: [windmills]\n", "3:13 catalogue-missing", "there is: converters, inverters, modules, racking")
end

function TestFacts:test_mistakes_in_a_catalogue_cite_it()
  plumb.write(path_of("our-models.yaml"),
    "module_models:\n  - {name: Quillon Q440, rated_power: 440 V}\n  - {name: Quillon Q440, colour: red}\nmodules: []\n")
  refused(HEAD .. "catalogue: [our-models]\n",
    { "our-models.yaml:2:43 unit-wrong", "our-models.yaml:3:5 name-twice", "our-models.yaml:4:1 catalogue-key" },
    "a power is needed")
  plumb.write(path_of("our-models.yaml"), "")
  refused(HEAD .. "catalogue: [our-models]\n", "our-models.yaml empty", "the file says nothing")
end

function TestFacts:test_thirty_mistakes_at_once()
  local lines = { HEAD, "site:\n" }
  for i = 1, 30 do lines[#lines + 1] = ("  odd%d: 1\n"):format(i) end
  local report = refused(table.concat(lines), (function()
    local expected = {}
    for i = 1, 20 do expected[i] = (3 + i) .. ":3 unknown-key" end
    expected[21] = "more"
    return expected
  end)())
  lu.assertStrContains(report.problems[21].message, "only the first 20 mistakes are shown")
end

function TestFacts:test_mistakes_of_all_kinds_are_told_together()
  refused("title: [a]\nproject: {permit_aplication_date: 2026-08-03}\nsite: {exposure: X, elevation: 4}\nroof: none\nbuilding: windy\n",
    { "1:8 node-type", "2:11 unknown-key", "3:18 word", "3:32 unit-missing", "5:11 node-type" })
end

TestDays = {}

function TestDays:test_no_day_to_judge_by()
  local report = refused("title: House\nsite: {exposure: C}\n", "1:1 date-missing", "give --on YYYY-MM-DD",
    "permit_application_date: 2026-05-04")
  lu.assertEquals(report.on, cjson.null)
  local reports = check_files({ path_of("bad.yaml") }, "--on", "2026-08-03")
  lu.assertEquals(reports[1].problems, {})
  lu.assertEquals(reports[1].on, "2026-08-03")
end

function TestDays:test_a_day_that_is_none()
  plumb.write(path_of("good.yaml"), HEAD)
  for _, day in ipairs { "2026-02-30", "tomorrow", "", "2026-8-3", "03/08/2026" } do
    local _, code, errors = check_files({ path_of("good.yaml") }, "--on", day)
    lu.assertEquals(code, 64, day)
    lu.assertStrContains(errors, "--on 2026-05-04")
  end
end

TestSeveral = {}

function TestSeveral:test_the_others_still_run()
  plumb.write(path_of("bad.yaml"), "title: [\n")
  local sample = plumb.top .. "/samples/quill-hollow/"
  local reports, code = check_files { path_of("bad.yaml"), sample .. "failing.yaml", sample .. "standing.yaml" }
  lu.assertEquals(code, 3) -- what was not read goes before what fails
  lu.assertEquals(#reports, 3)
  lu.assertEquals(reports[1].findings, {})
  lu.assertEquals(reports[1].problems[1].code, "bracket-not-closed")
  lu.assertTrue(reports[2].counts.fail >= 3)
  lu.assertTrue(reports[3].counts.pass >= 20)
  lu.assertEquals({ reports[2].problems, reports[3].problems }, { {}, {} })
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result == 0)

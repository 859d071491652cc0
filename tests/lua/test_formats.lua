-- The formats for pipelines, as their readers meet them: lines of JSON, SARIF, JUnit, and the HTML report's
-- promise that it can be made again.
local cjson = require("cjson")
local lu = require("luaunit")
local plumb = require("plumb")

TestFormats = {}

local function sample(name) return plumb.top .. "/samples/quill-hollow/" .. name .. ".yaml" end

local function report(format, names, ...)
  local arguments = { "check", "--book", "marrow-bay", "--format", format, ... }
  for _, name in ipairs(names) do arguments[#arguments + 1] = sample(name) end
  return plumb.run(arguments)
end

local function count(text, part)
  local _, times = text:gsub(part, "")
  return times
end

function TestFormats:test_a_line_per_design_says_what_json_says()
  local lines = {}
  for line in report("ndjson", { "failing", "standing" }):gmatch("[^\n]+") do lines[#lines + 1] = line end
  lu.assertEquals(#lines, 2)
  lu.assertEquals(cjson.decode(lines[1]), cjson.decode((report("json", { "failing" }))))
  lu.assertStrContains(cjson.decode(lines[2]).design, "standing.yaml")
end

function TestFormats:test_sarif_counts_kinds_as_json_does()
  local output, code = report("sarif", { "failing" })
  local run = cjson.decode(output).runs[1]
  local counts = cjson.decode((report("json", { "failing" }))).counts
  local kinds = {}
  for _, result in ipairs(run.results) do kinds[result.kind] = (kinds[result.kind] or 0) + 1 end
  lu.assertEquals(code, 1)
  for _, kind in ipairs { "fail", "open", "review", "pass", "informational", "notApplicable" } do
    lu.assertEquals(kinds[kind] or 0, counts[kind], kind)
  end
  lu.assertEquals(run.invocations[1].exitCode, 1)
end

function TestFormats:test_sarif_is_one_log_of_several_runs()
  local log = cjson.decode((report("sarif", { "failing", "unfinished", "standing" })))
  lu.assertEquals(#log.runs, 3)
  lu.assertEquals(log.version, "2.1.0")
end

function TestFormats:test_failures_only_tells_what_it_leaves_out()
  local run = cjson.decode((report("sarif", { "unfinished" }, "--failures-only"))).runs[1]
  lu.assertEquals(#run.results, 0)
  local told = run.invocations[1].toolExecutionNotifications
  lu.assertEquals(told[#told].level, "warning")
  lu.assertStrMatches(told[#told].message.text, "Only what fails.*[1-9]%d* findings are open.*")
  local _, code, errors = report("junit", { "standing" }, "--failures-only")
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "--format sarif")
end

function TestFormats:test_a_waived_fail_is_suppressed_and_skipped()
  local books = plumb.folder() .. "/books"
  os.execute("mkdir -p '" .. books .. "/towns' && cp -r '" .. plumb.top .. "/rules/towns/marrow-bay' '" .. books .. "/towns/'")
  local path = books .. "/towns/marrow-bay/book.yaml"
  local book = plumb.read(path) .. "\nwaivers:\n  - {rule: irc/ridge-clearance, about: \"roof_plane:south\", reason: seen on site, "
    .. "granted_by: Chief Official, permit: B-2026-0412, from: 2026-01-01, until: 2027-01-01}\n"
  plumb.write(path, book)
  local run = cjson.decode((report("sarif", { "failing" }, "--books", books))).runs[1]
  local found = 0
  for _, result in ipairs(run.results) do
    if result.ruleId == "irc/ridge-clearance" and result.kind == "fail" then
      found = found + 1
      lu.assertEquals(result.suppressions[1].justification, "seen on site")
      lu.assertEquals(result.suppressions[1].kind, "external")
    elseif result.kind == "fail" then
      lu.assertEquals(result.suppressions, {})
    end
  end
  lu.assertEquals(found, 1)
  local junit = report("junit", { "failing" }, "--books", books)
  local before = report("junit", { "failing" })
  lu.assertEquals(count(junit, "<failure "), count(before, "<failure ") - 1)
  lu.assertEquals(count(junit, "<skipped "), count(before, "<skipped ") + 1)
end

-- What stands only by a waiver says so.
function TestFormats:test_a_design_that_stands_by_a_waiver_says_so()
  local folder = plumb.folder() .. "/lenient"
  os.execute("mkdir -p '" .. folder .. "'")
  local words = "but what is waived, and nothing is left open."
  for _, waivers in ipairs { "", "waivers:\n  - {rule: irc/ridge-clearance, about: \"roof_plane:south\", reason: seen on site, "
    .. "granted_by: Chief Official, permit: B-2026-0412, from: 2026-01-01, until: 2027-01-01}\n" } do
    plumb.write(folder .. "/book.yaml", "book: lenient\ntitle: L\nmaintained_by: B\nrole: authority\nscope: roofs\nadopts:\n"
      .. "  - {book: irc, edition: 2021, from: 2020-01-01, cite: \"Ordinance 1\"}\n" .. waivers)
    for _, format in ipairs { "text", "html" } do
      local out, code = plumb.run({ "check", plumb.top .. "/samples/quill-hollow/failing.yaml", "--book", folder, "--format", format })
      lu.assertEquals({ code, plumb.count(out, words) }, waivers == "" and { 1, 0 } or { 0, 1 }, out:sub(1, 400))
    end
  end
end

function TestFormats:test_junit_counts_what_it_holds()
  for _, name in ipairs { "failing", "unfinished", "standing" } do
    local xml = report("junit", { name })
    for tag, attribute in pairs { testcase = "tests", failure = "failures", error = "errors", skipped = "skipped" } do
      lu.assertEquals(tonumber(xml:match(attribute .. '="(%d+)"')), count(xml, "<" .. tag .. "[ >]"), name .. " " .. tag)
    end
  end
  lu.assertTrue(count((report("junit", { "unfinished" })), "<error ") > 0) -- unknown is no pass
end

-- A design with mistakes: each format tells them with their places, and none of them reads as a pass.
function TestFormats:test_problems_in_every_format()
  local path = plumb.folder() .. "/wrong.yaml"
  local text = plumb.change(plumb.sample("standing"), "exposure: C", "exposure: Z")
  plumb.write(path, plumb.change(text, "  stories: 1", "  stores: 1"))
  local function told(format)
    local output, code = plumb.run({ "check", path, "--book", "marrow-bay", "--format", format, "--catalogues", plumb.top .. "/samples/catalogue" })
    lu.assertEquals(code, 3, format)
    return output
  end
  local run = cjson.decode(told("sarif")).runs[1]
  local notes = run.invocations[1].toolExecutionNotifications
  lu.assertEquals(#run.results, 0)
  lu.assertFalse(run.invocations[1].executionSuccessful)
  lu.assertEquals(#notes, 2)
  lu.assertEquals({ notes[1].level, notes[2].level }, { "error", "error" })
  lu.assertEquals(notes[1].locations[1].physicalLocation.artifactLocation.uri, "file://" .. path)
  lu.assertStrContains(notes[1].message.text, "exposure")
  local xml = told("junit")
  lu.assertEquals({ count(xml, "<testcase "), count(xml, "<error ") }, { 2, 2 })
  lu.assertStrContains(xml, 'tests="2" failures="0" errors="2" skipped="0"')
  lu.assertStrContains(xml, 'classname="plumbrule/problem"')
  lu.assertStrContains(xml, path .. ":")
  local html = told("html")
  lu.assertStrContains(html, "exposure: Z") -- the line as it stands
  lu.assertStrContains(html, "stores")
  lu.assertEquals(#cjson.decode(told("json")).problems, 2)
end

-- What is wrong in a book is the tool's configuration, not the run; the day may be missing, too.
function TestFormats:test_problems_of_books_and_of_the_day()
  local folder = plumb.folder() .. "/broken"
  os.execute("mkdir -p '" .. folder .. "'")
  plumb.write(folder .. "/book.yaml", "book: broken\ntitle: B\nmaintained_by: nobody\nrole: authority\nscope: roofs\n")
  plumb.write(folder .. "/bad.lua", "return {\n  title = 'x', cite = 'y', about = 'roof_plane',\n  check = function(plane) shall.be('It is', plane.nothing) end,\n}\n")
  plumb.write(folder .. "/advice.lua", "return {\n  title = 'Advice', about = 'roof_plane', cite = 'B.2',\n  applies = function() return true end,\n"
    .. "  check = function() should.be('It is white', false) end,\n  remedy = 'Paint it.',\n}\n")
  local function told(format, ...)
    return plumb.run({ "check", sample("standing"), "--book", folder, "--format", format, ... })
  end
  local output, code = told("sarif")
  local run = cjson.decode(output).runs[1]
  lu.assertEquals(code, 4)
  lu.assertTrue(#run.invocations[1].toolConfigurationNotifications > 0)
  local warnings = 0
  for _, result in ipairs(run.results) do
    if result.ruleId == "broken/advice" then
      warnings = warnings + 1
      lu.assertEquals({ result.kind, result.level }, { "fail", "warning" })
    end
  end
  lu.assertEquals(warnings, 2)
  local xml = told("junit")
  lu.assertEquals(count(xml, "Advice not followed%. "), 2)
  lu.assertStrContains(xml, "To do: Paint it.")
  lu.assertEquals(count(xml, "<failure "), 0)
  local html = told("html")
  lu.assertStrContains(html, "Paint it.")
  -- without a day nothing is held against anything
  local path = plumb.folder() .. "/dateless.yaml"
  plumb.write(path, plumb.change(plumb.sample("standing"), "  permit_application_date: 2026-08-03\n", ""))
  for _, format in ipairs { "sarif", "junit", "html", "json", "ndjson", "text" } do
    output, code = plumb.run({ "check", path, "--book", "marrow-bay", "--format", format, "--catalogues", plumb.top .. "/samples/catalogue" })
    lu.assertEquals(code, 3, format)
    lu.assertStrContains(output, "permit_application_date")
  end
end

-- A section stands with its code, an answer with its thing, and what is to be bought is listed.
function TestFormats:test_html_says_of_what_and_by_which_code()
  local out = plumb.run({ "check", plumb.top .. "/samples/three-roofs/tern-lane.yaml", "--book", "marrow-bay", "--format", "html" })
  local words = out:gsub("<[^>]+>", " "):gsub("%s+", " ")
  lu.assertStrContains(words, "Clear width at the ridge · roof_plane south · irc 2021, R324.6.2 ")
  lu.assertStrContains(words, "Label fit for its place , label shutdown-placard: ")
  lu.assertStrContains(words, "Brae K15 Rapid shutdown device not told Brae ")
  lu.assertEquals(plumb.count(words, "NULL"), 0)
end

-- The book whose text it is stands before the section: a town's own text cites no model code.
function TestFormats:test_text_says_by_which_code()
  local out = report("text", { "failing" })
  lu.assertStrContains((out:gsub("%s+", " ")), "rule irc 2021, R324.6.2 (irc/ridge-clearance); marrow-bay adopts it from")
end

function TestFormats:test_html_is_one_file_per_design()
  local _, code, errors = report("html", { "failing", "standing" })
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "one file per design")
end

function TestFormats:test_the_same_input_gives_the_same_bytes()
  for _, format in ipairs { "html", "sarif", "junit", "ndjson" } do
    lu.assertEquals((report(format, { "failing" })), (report(format, { "failing" })), format)
  end
end

-- Each digest in the report is what the system's own tool says of the file.
function TestFormats:test_digests_are_those_of_the_files()
  local run = cjson.decode((report("sarif", { "standing" }))).runs[1]
  local html = report("html", { "standing" })
  lu.assertTrue(#run.artifacts > 20)
  for _, artifact in ipairs(run.artifacts) do
    local path = artifact.location.uri:gsub("^file://", ""):gsub("%%(%x%x)", function(hex) return string.char(tonumber(hex, 16)) end)
    local pipe = assert(io.popen("sha256sum '" .. path .. "'"))
    local digest = pipe:read("l"):match("^%x+")
    pipe:close()
    lu.assertEquals(artifact.hashes["sha-256"], digest, path)
    lu.assertStrContains(html, digest)
  end
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

-- Sign-offs: what a rule hands to a person stands accepted while the design is as it was signed.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestSignoff = {}

-- A book of two rules: one asks a person, one fails or misses a fact as the design has it.
local folder
function TestSignoff:setUp()
  folder = plumb.folder() .. "/sign"
  os.execute(("rm -rf '%s' && mkdir -p '%s/asks'"):format(folder, folder))
  plumb.write(folder .. "/asks/book.yaml", [[
book: asks
title: Asks
maintained_by: nobody
role: authority
scope: roofs
]])
  plumb.write(folder .. "/asks/flashing.lua", [[
return {
  title = "Flashing seen on site",
  cite = "A.1",
  about = "roof_plane",
  applies = function() return true end,
  check = function() review("Somebody must look at the flashing") end,
}
]])
  plumb.write(folder .. "/asks/layers.lua", [[
return {
  title = "Layers",
  cite = "A.2",
  about = "roof_plane",
  applies = function() return true end,
  check = function(plane) shall.not_exceed("Layers", plane.layers, 2) end,
}
]])
end

local house = [[
title: Gull Lane
project: {permit_application_date: 2026-08-03}
roof:
  shape: gable
  planes:
    - name: south
      layers: LAYERS
]]

local function digest_of(text)
  plumb.write(folder .. "/bytes", text)
  local pipe = assert(io.popen("sha256sum < '" .. folder .. "/bytes'"))
  local digest = pipe:read("a"):match("^%x+")
  pipe:close()
  return digest
end

local function entry(digest, changes)
  local words = { rule = "asks/flashing", about = '"roof_plane:south"', verdict = "accepted", by = "Ada Thornbury",
    license = "PE 20418", why = "seen from the ladder", on = "2026-08-10", digest = digest }
  for key, value in pairs(changes or {}) do words[key] = value or nil end
  local parts = {}
  for _, key in ipairs({ "rule", "about", "verdict", "by", "license", "why", "on", "until", "digest", "equipment", "extra" }) do
    if words[key] then parts[#parts + 1] = key .. ": " .. words[key] end
  end
  return "- {" .. table.concat(parts, ", ") .. "}\n"
end

local function check(text, signoffs, format)
  plumb.write(folder .. "/house.yaml", text)
  if signoffs then plumb.write(folder .. "/house.signoff.yaml", signoffs) end
  local output, code = plumb.run({ "check", folder .. "/house.yaml", "--book", folder .. "/asks", "--format", format or "json" })
  if not format then output = cjson.decode(output) end
  return output, code
end

local good = house:gsub("LAYERS", "1")
local digest = function() return digest_of(good) end

function TestSignoff:test_without_one_it_is_for_a_person()
  local report, code = check(good)
  lu.assertEquals(code, 2)
  lu.assertEquals(plumb.find(report, "asks/flashing").signed, cjson.null)
  lu.assertEquals(report.counts.signed, 0)
end

function TestSignoff:test_a_signed_point_is_shown_and_counted_but_does_not_decide()
  local report, code = check(good, entry(digest()))
  lu.assertEquals({ code, #report.problems }, { 0, 0 })
  local finding = plumb.find(report, "asks/flashing")
  lu.assertEquals(finding.kind, "review")
  lu.assertEquals({ finding.signed.by, finding.signed.license, finding.signed.on }, { "Ada Thornbury", "PE 20418", "2026-08-10" })
  lu.assertEquals(finding.signed.why, "seen from the ladder")
  lu.assertEquals(finding.signed.place.line, 1)
  lu.assertEquals({ report.counts.review, report.counts.signed }, { 1, 1 })
end

function TestSignoff:test_every_format_shows_it()
  local text = check(good, entry(digest()), "text")
  lu.assertStrContains(text, "Signed: Flashing seen on site")
  lu.assertStrContains((text:gsub("%s+", " ")), "accepted by Ada Thornbury, license PE 20418, on 2026-08-10: seen from the ladder")
  lu.assertStrContains((text:gsub("%s+", " ")), "1 for a person (1 signed)")
  local html = check(good, nil, "html")
  lu.assertStrContains(html, "Signed by a person")
  lu.assertStrContains(html, "Ada Thornbury")
  lu.assertNotStrContains(html, "must be judged by a person.")
  local sarif = cjson.decode((check(good, nil, "sarif")))
  local suppressed = {}
  for _, result in ipairs(sarif.runs[1].results) do
    for _, one in ipairs(result.suppressions) do suppressed[#suppressed + 1] = result.ruleId .. " " .. one.status end
  end
  lu.assertEquals(suppressed, { "asks/flashing accepted" })
  local junit, code = check(good, nil, "junit")
  lu.assertEquals(code, 0)
  lu.assertStrContains(junit, "skipped")
end

-- One line of what the program notes of a sign-off that lifts nothing.
local function noted(text, signoffs)
  local report, code = check(text, signoffs)
  lu.assertEquals(#report.problems, 1)
  local problem = report.problems[1]
  lu.assertStrContains(problem.place.file, "house.signoff.yaml")
  lu.assertEquals(problem.place.line, 1)
  return problem.code, code, problem.message, report, problem
end

function TestSignoff:test_it_lapses_when_the_design_changes()
  local changed = good:gsub("Gull Lane", "Gull Lane 2")
  local code, exit, message, report, problem = noted(changed, entry(digest()))
  lu.assertEquals({ code, exit }, { "signoff-lapsed", 2 })
  lu.assertStrContains(message, "has changed since, or it was another design")
  lu.assertStrContains(problem.example, digest_of(changed))
  lu.assertEquals(report.counts.signed, 0)
end

function TestSignoff:test_it_ends_on_its_day()
  local code, exit = noted(good, entry(digest(), { ["until"] = "2026-08-02" }))
  lu.assertEquals({ code, exit }, { "signoff-expired", 2 })
  local _, last = check(good, entry(digest(), { ["until"] = "2026-08-03" }))
  lu.assertEquals(last, 0)
end

function TestSignoff:test_it_lifts_neither_a_fail_nor_an_open()
  local failing = house:gsub("LAYERS", "3")
  local both = entry(digest_of(failing)) .. entry(digest_of(failing), { rule = "asks/layers" })
  local report, exit = check(failing, both)
  lu.assertEquals({ exit, report.problems[1].code, report.problems[1].place.line }, { 1, "signoff-unused", 2 })
  lu.assertStrContains(report.problems[1].message, "no sign-off lifts what fails")
  local open = house:gsub("LAYERS", "")
  both = entry(digest_of(open)) .. entry(digest_of(open), { rule = "asks/layers" })
  report, exit = check(open, both)
  lu.assertEquals({ exit, report.problems[1].code }, { 2, "signoff-unused" })
  lu.assertStrContains(report.problems[1].message, "no sign-off stands for a fact")
end

function TestSignoff:test_unused_orphaned_and_twice()
  local code = noted(good, entry(digest(), { rule = "asks/layers" }))
  lu.assertEquals(code, "signoff-unused")
  code = noted(good, entry(digest(), { rule = "asks/flushing" }))
  lu.assertEquals(code, "signoff-orphaned")
  code = noted(good, entry(digest(), { about = '"roof_plane:north"' }))
  lu.assertEquals(code, "signoff-orphaned")
  local report, exit = check(good, entry(digest()) .. entry(digest()))
  lu.assertEquals({ exit, report.problems[1].code, report.problems[1].place.line }, { 0, "signoff-unused", 2 })
end

function TestSignoff:test_bad_files_lift_nothing()
  local cases = {
    { entry(digest(), { verdict = "rejected" }), "verdict-unknown" },
    { entry(digest(), { verdict = false }), "key-missing" },
    { entry(digest(), { license = false }), "key-missing" },
    { entry("abc"), "digest-bad" },
    { entry(digest():upper()), "digest-bad" },
    { entry(digest(), { on = "2026-02-30" }), "date-bad" },
    { entry(digest(), { about = "south" }), "about-bad", 'about: "roof_plane:south"' },
    { entry(digest(), { about = '"service service"' }), "about-bad", 'about: "service:service"' },
    { entry(digest(), { extra = "1" }), "unknown-key" },
    { "rule: asks/flashing\n" },
  }
  for _, case in ipairs(cases) do
    local report, exit = check(good, case[1])
    lu.assertEquals({ exit, report.counts.signed }, { 3, 0 }, case[1])
    if case[2] then lu.assertEquals(report.problems[1].code, case[2], case[1]) end
    if case[3] then lu.assertEquals(report.problems[1].example, case[3]) end
    lu.assertStrContains(report.problems[1].place.file, "house.signoff.yaml")
  end
  local _, empty = check(good, "# nobody yet\n")
  lu.assertEquals(empty, 2)
end

-- ---- equipment of catalogues --------------------------------------------------------------------------

local QUARRY = "  - {name: Quarry 440, length: 69 in, width: 44 in, weight: 48 lb}\n"
local OTHER = "  - {name: Other 400, length: 68 in, width: 41 in}\n"
local equipped = good .. "catalogue: [sheets]\nmodules:\n  - {name: m1, model: Quarry 440, plane: south}\n"

local function sheets(text) plumb.write(folder .. "/sheets.yaml", "module_models:\n" .. text) end

-- The digest of the equipment, as the check tells it to who has not said it.
local function told(problem) return (problem.example:match("^equipment: (%x+) %(once it is judged anew%)$")) end

function TestSignoff:test_data_sheets_are_signed_with_the_design()
  sheets(QUARRY .. OTHER)
  local code, exit, message, _, problem = noted(equipped, entry(digest_of(equipped)))
  lu.assertEquals({ code, exit }, { "signoff-incomplete", 2 })
  lu.assertStrContains(message, "does not say which data sheets were signed")
  lu.assertStrContains(message, "to be renewed, with 'equipment'")
  local equipment = told(problem)
  lu.assertEquals(#equipment, 64)
  local whole = entry(digest_of(equipped), { equipment = equipment })
  local report, signed = check(equipped, whole)
  lu.assertEquals({ signed, #report.problems, report.counts.signed }, { 0, 0, 1 })
  -- What the design does not use, the order and comments change nothing.
  for _, same in ipairs({ "  # sheets of spring\n" .. OTHER .. QUARRY, QUARRY, QUARRY .. OTHER:gsub("68", "67") }) do
    sheets(same)
    report, signed = check(equipped, whole)
    lu.assertEquals({ signed, #report.problems }, { 0, 0 }, same)
  end
  -- Each fact of what it uses does, told or not.
  for _, other in ipairs({ QUARRY:gsub("48 lb", "58 lb"), QUARRY:gsub(", weight: 48 lb", ""), (QUARRY:gsub("44 in", "{is: 44 in, from: measured}")) }) do
    sheets(other)
    local lapsed, ended, why, _, again = noted(equipped, whole)
    lu.assertEquals({ lapsed, ended }, { "signoff-lapsed", 2 }, other)
    lu.assertStrContains(why, "data sheets of the equipment that the design uses have changed since; it is to be renewed")
    lu.assertNotEquals(told(again), equipment)
  end
end

function TestSignoff:test_equipment_that_is_none()
  local code, exit, message = noted(good, entry(digest(), { equipment = digest() }))
  lu.assertEquals({ code, exit }, { "signoff-lapsed", 2 })
  lu.assertStrContains(message, "uses no equipment of a catalogue")
  local report, bad = check(good, entry(digest(), { equipment = "abc" }))
  lu.assertEquals({ bad, report.problems[1].code }, { 3, "digest-bad" })
  -- Models in the design's own file are signed with it.
  local own = good .. "module_models:\n" .. QUARRY .. "modules:\n  - {name: m1, model: Quarry 440, plane: south}\n"
  local _, signed = check(own, entry(digest_of(own)))
  lu.assertEquals(signed, 0)
end

-- What the design uses is followed without calls within calls: a chain as long as a file can hold fits into a small stack.
function TestSignoff:test_a_long_chain_of_references()
  local parts = { good, "circuits:\n" }
  for i = 1, 19000 do parts[#parts + 1] = ("  - {name: c%d, raceway_of: c%d}\n"):format(i, i + 1) end
  parts[#parts + 1] = "  - {name: c19001}\n"
  local text = table.concat(parts)
  plumb.write(folder .. "/house.yaml", text)
  plumb.write(folder .. "/house.signoff.yaml", entry(digest_of(text)))
  local pipe = assert(io.popen(("ulimit -s 1024; '%s' check '%s/house.yaml' --book '%s/asks'"):format(plumb.program, folder, folder)))
  local output = pipe:read("a")
  lu.assertEquals({ select(2, pipe:close()) }, { "exit", 0 })
  lu.assertStrContains(output, "Signed: Flashing seen on site")
end

-- A shell puts it among the designs of a folder.
function TestSignoff:test_it_is_no_design()
  check(good, entry(digest()))
  local output, code, errors = plumb.run({ "check", folder .. "/house.signoff.yaml", folder .. "/house.yaml", "--book", folder .. "/asks" })
  lu.assertEquals(code, 0)
  lu.assertStrContains(output, "Signed: Flashing seen on site")
  lu.assertStrContains(errors, "holds sign-offs")
  local lines, batched = plumb.run({ "check", folder .. "/house.signoff.yaml", folder .. "/house.yaml", "--jobs", "1", "--book", folder .. "/asks" })
  lu.assertEquals({ batched, select(2, lines:gsub("\n", "")) }, { code, 1 })
  local _, compared = plumb.run({ "compare", folder .. "/asks", folder .. "/asks", folder .. "/house.signoff.yaml", folder .. "/house.yaml" })
  lu.assertEquals(compared, 0)
  local _, alone = plumb.run({ "check", folder .. "/house.signoff.yaml", "--book", folder .. "/asks" })
  lu.assertEquals(alone, 64)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

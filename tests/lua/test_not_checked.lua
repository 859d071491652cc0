-- What is declared and covered by no rule is for a person; a fact that no rule read is listed.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestNotChecked = {}

local folder
function TestNotChecked:setUp()
  folder = plumb.folder() .. "/scope"
  os.execute(("rm -rf '%s' && mkdir -p '%s/town' '%s/wide' '%s/wired'"):format(folder, folder, folder, folder))
  local book = "book: %s\ntitle: T\nmaintained_by: M\nrole: authority\nscope: roofs\n%s"
  plumb.write(folder .. "/town/book.yaml", book:format("town", ""))
  plumb.write(folder .. "/wide/book.yaml", book:format("wide",
    "covers: [storage, generator, ground array, second dwelling unit, detached building, other occupancy, limit of export]\n"))
  plumb.write(folder .. "/wired/book.yaml", book:format("wired", "covers: [panel in a detached building]\n"))
  for _, name in ipairs({ "town", "wide", "wired" }) do
    plumb.write(("%s/%s/layers.lua"):format(folder, name), [[
return {
  title = "Layers",
  cite = "A.1",
  about = "roof_plane",
  check = function(plane) shall.not_exceed("Layers", plane.layers, 2) end,
}
]])
  end
end

local house = [[
title: Gull Lane
project: {permit_application_date: 2026-08-03, address: 1 Gull Lane, scope: [WORK]}
building: {dwelling_units: UNITS, occupancy: OCCUPANCY}
racking: {mounting: MOUNTING}
roof:
  planes:
    - {name: south, layers: 1, structure: STRUCTURE}
other_sources: SOURCES
interconnection: {side: load side, EXPORT}
panels: [{name: main, detached_building: DETACHED}]
]]

local function check(words, book, format)
  local all = { WORK = "roof-mounted PV", DETACHED = "no", UNITS = "1", OCCUPANCY = "townhouse", MOUNTING = "rails", STRUCTURE = "dwelling", SOURCES = "none", EXPORT = "ocpd_rating: 40 A" }
  for key, word in pairs(words or {}) do all[key] = word end
  plumb.write(folder .. "/house.yaml", (house:gsub("%u%u%u+", all)))
  local output, code = plumb.run({ "check", folder .. "/house.yaml", "--book", folder .. "/" .. (book or "town"), "--format", format or "json" })
  return format and output or cjson.decode(output), code
end

local function beyond(report)
  local found = {}
  for _, finding in ipairs(report.findings) do
    if finding.rule == "plumbrule/scope" then
      lu.assertEquals(finding.kind, "review")
      found[#found + 1] = finding
    end
  end
  return found
end

function TestNotChecked:test_a_plain_house_is_within()
  local report, code = check()
  lu.assertEquals({ code, #beyond(report) }, { 0, 0 }, cjson.encode(report.problems))
end

function TestNotChecked:test_each_declared_thing_without_rules_is_for_a_person()
  local declared = {
    { { SOURCES = "[{name: s, kind: storage}]" }, "storage" },
    { { SOURCES = "[{name: s, kind: generator}]" }, "generator" },
    { { SOURCES = "[{name: s, kind: wind}]" }, "wind source" },
    { { SOURCES = "[{name: s, kind: other}]" }, "other source" },
    { { WORK = "storage" }, "storage" },
    { { WORK = "storage", SOURCES = "[{name: s, kind: storage}]" }, "storage" }, -- once
    { { WORK = "ground-mounted PV" }, "ground array" },
    { { DETACHED = "yes" }, "panel in a detached building" },
    { { MOUNTING = "ground" }, "ground array" },
    { { UNITS = "2" }, "second dwelling unit" },
    { { STRUCTURE = "carport" }, "detached building" },
    { { OCCUPANCY = "two-family dwelling" }, "second dwelling unit" }, -- whatever its units are told to be
    { { OCCUPANCY = "two-family dwelling", UNITS = "2" }, "second dwelling unit" }, -- once
    { { OCCUPANCY = "accessory" }, "detached building" },
    { { OCCUPANCY = "commercial" }, "other occupancy" },
    { { OCCUPANCY = "multifamily" }, "other occupancy" },
    { { EXPORT = "export_limit: 2 kW" }, "limit of export" },
    { { EXPORT = "export_limit: 0 kW" }, "limit of export" },
  }
  for _, one in ipairs(declared) do
    local report, code = check(one[1])
    local found = beyond(report)
    lu.assertEquals({ code, #found }, { 2, 1 }, one[2] .. cjson.encode(report.problems))
    lu.assertStrContains(found[1].message, "(" .. one[2] .. ")")
    lu.assertStrContains(found[1].place.file, "house.yaml")
    -- A book that says it has rules for it answers for it.
    report, code = check(one[1], "wide")
    local never = one[2]:find("source") and 1 or 0 -- no book can say so of these
    lu.assertEquals({ code, #beyond(report) }, { 2 * never, never }, one[2])
  end
end

-- A code with a rule on the feeder to another building answers for the panel there, not for the building.
function TestNotChecked:test_a_panel_in_a_detached_building_is_covered_without_its_building()
  lu.assertEquals(#beyond(check({ DETACHED = "yes" }, "wired")), 0)
  lu.assertEquals(#beyond(check({ DETACHED = "yes", STRUCTURE = "carport" }, "wired")), 1)
end

local function unread(report, kind, fact)
  for _, one in ipairs(report.not_checked) do
    if one.kind == kind and one.fact == fact then return one.unread end
  end
  return 0
end

function TestNotChecked:test_a_fact_that_no_rule_read_is_listed()
  local report = check()
  lu.assertEquals(unread(report, "project", "address"), 1)
  lu.assertEquals(unread(report, "building", "dwelling_units"), 1)
  lu.assertEquals(unread(report, "roof_plane", "layers"), 0) -- a rule read it
  lu.assertEquals(unread(report, "project", "permit_application_date"), 0) -- the review read it
  local text = check(nil, nil, "text")
  lu.assertStrContains(text, "Not checked: given, but no rule in force looked at it")
  lu.assertStrContains(text, "project: address")
  lu.assertStrContains(text, "building: dwelling_units")
  -- Once a rule reads it, it goes.
  plumb.write(folder .. "/town/units.lua", [[
return {
  title = "Units",
  cite = "A.2",
  about = "building",
  check = function(building) shall.not_exceed("Units", building.dwelling_units, 4) end,
}
]])
  lu.assertEquals(unread(check(), "building", "dwelling_units"), 0)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

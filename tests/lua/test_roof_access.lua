-- Fire access: each rule passes, fails and waits; thresholds at equality; editions; exemptions.
local lu = require("luaunit")
local plumb = require("plumb")
local roof = require("roof")

local folder
-- A town of the test's own over one edition of the model code, with numbers of its own.
local function town(edition, values, code)
  folder = folder or plumb.folder()
  code = code or "irc"
  os.execute("mkdir -p " .. folder .. "/books/testham")
  local lines = {
    "book: testham", "title: Testham", "maintained_by: Building office", "role: authority", "scope: dwellings",
    "adopts:", ('  - {book: %s, edition: %s, from: 2010-01-01, cite: "Act 1"}'):format(code, edition),
  }
  local has_values = false
  for name, value in pairs(values or {}) do
    if not has_values then lines[#lines + 1] = "values:" end
    has_values = true
    lines[#lines + 1] = ('  %s: [{from: 2010-01-01, edition: %s, is: %s, cite: "Act 2"}]'):format(name, edition, value)
  end
  plumb.write(folder .. "/books/testham/book.yaml", table.concat(lines, "\n") .. "\n")
  return { books = { "testham" }, directory = folder .. "/books" }
end

local function kind_of(rule, about, design, edition, values, code)
  local report = plumb.check(roof.design(design), town(edition or "2021", values, code))
  return plumb.find(report, rule, about).kind, plumb.find(report, rule, about)
end

local function ridge(design, edition, values) return kind_of("irc/ridge-clearance", "roof_plane:south", design, edition, values) end

-- 24 modules of 22 ft² on 1 600 ft² of surface are 33 %: the whole slope is 20 ft, the array 4 x 44 in high.
local third = { at = { 20, 46 }, columns = 6, rows = 4, gap = 0 }

TestRidge = {}

function TestRidge:test_at_the_threshold()
  for _, edition in ipairs({ "2018", "2021", "2024" }) do
    local kind, finding = ridge(third, edition)
    lu.assertEquals(kind, "pass", edition)
    local test = plumb.test(finding, "Clear width")
    lu.assertAlmostEquals(test.actual.value, 240 - 46 - 176, 1e-6)
    lu.assertEquals(test.limit.value, 18)
    lu.assertAlmostEquals(test.margin, 0, 1e-9)
    lu.assertEquals(ridge({ at = { 20, 46.01 }, columns = 6, rows = 4, gap = 0 }, edition), "fail")
    -- One third and more, as some towns say it.
    kind, finding = ridge(third, edition, { ridge_limit_inclusive = "no" })
    lu.assertEquals({ kind, plumb.test(finding, "Clear width").limit.value }, { "fail", 36 })
    -- A hair more than 33 %.
    kind, finding = ridge({ at = { 20, 45 }, columns = 6, rows = 4, gap = 0, width = 44.01 }, edition)
    lu.assertEquals({ kind, plumb.test(finding, "Clear width").limit.value }, { "fail", 36 })
  end
end

function TestRidge:test_sprinklers_raise_the_threshold()
  local design = { at = { 20, 45 }, columns = 6, rows = 4, gap = 0, width = 44.01, sprinklers = "NFPA 13D" }
  lu.assertEquals(ridge(design), "pass")
  design.sprinklers = "P2904"
  lu.assertEquals(ridge(design), "pass")
end

-- Of the whole roof, not of the plane that carries the modules, and in plan.
function TestRidge:test_share_of_the_whole_roof()
  local report = plumb.check(roof.design(third), town("2021"))
  local text = plumb.run({ "check", plumb.folder() .. "/design.yaml", "--book", "testham", "--books", plumb.folder() .. "/books" })
  lu.assertStrContains(text, "Clear width at the ridge")
  lu.assertEquals(plumb.find(report, "irc/ridge-clearance", "roof_plane:south").kind, "pass") -- 66 % of its own plane
end

function TestRidge:test_both_sides_is_a_switch()
  local design = { at = { 20, 60 }, columns = 6, rows = 4, gap = 0 }
  lu.assertEquals(ridge(design), "fail")
  lu.assertEquals(ridge(design, "2021", { ridge_both_sides = "no" }), "pass")
  design.more = { "{name: n, model: T, plane: north, at: [100 in, 12 in], orientation: landscape, columns: 1, rows: 1}" }
  lu.assertEquals(ridge(design, "2021", { ridge_both_sides = "no" }), "fail")
end

function TestRidge:test_small_array_area()
  lu.assertEquals(ridge(third, "2021", { ridge_area_limit = "528 ft²" }), "pass")
  lu.assertEquals(ridge(third, "2021", { ridge_area_limit = "527 ft²" }), "fail")
end

function TestRidge:test_missing_is_open()
  local text = plumb.change(roof.design(third), "sprinklers: none, ", "")
  local finding = plumb.find(plumb.check(text, town("2021")), "irc/ridge-clearance", "roof_plane:south")
  lu.assertEquals(finding.kind, "open")
  lu.assertStrContains(finding.missing[1].fact, "sprinklers")
end

TestExemptions = {}

function TestExemptions:test_each_and_its_switch()
  local failing = { at = { 20, 60 }, columns = 6, rows = 4, gap = 0 }
  local function with(change)
    local design = {}
    for name, value in pairs(failing) do design[name] = value end
    for name, value in pairs(change) do design[name] = value end
    return design
  end
  for _, case in ipairs({
    { { slope = "2/12" }, "exempt_low_slope" },
    { { structure = "detached garage" }, "exempt_detached" },
    { { structure = "carport\n      detached: yes" }, "exempt_detached" },
    { { roof_operations = "no" }, "exempt_no_roof_operations" },
  }) do
    lu.assertEquals(ridge(with(case[1])), "notApplicable", case[2])
    lu.assertEquals(ridge(with(case[1]), "2021", { [case[2]] = "no" }), "fail", case[2])
  end
  lu.assertEquals(ridge(with({ slope = "2.01/12" })), "fail") -- up to two in twelve is exempt, not above
  lu.assertEquals(ridge(with({ structure = "attached garage" })), "fail")
  lu.assertEquals(ridge(with({ sprinklers = "NFPA 13D" })), "fail")
  lu.assertEquals(ridge(with({ sprinklers = "NFPA 13D" }), "2021", { exempt_sprinklered = "yes" }), "notApplicable")
  lu.assertEquals(ridge(failing, "2021", { exempt_steeper_than = "8/12" }), "notApplicable")
  lu.assertEquals(ridge(failing, "2021", { exempt_steeper_than = "9/12" }), "fail")
end

TestPathways = {}

local function pathway(design, edition, values) return kind_of("irc/access-pathway", "roof_plane:south", design, edition, values) end

function TestPathways:test_on_the_plane_at_equality()
  -- 480 in of eave: 6 modules of 72 in leave 48 in; 36 in on one side and 12 in on the other.
  lu.assertEquals(pathway({ at = { 36, 12 }, columns = 6, rows = 3, gap = 0 }), "pass")
  local blocked = { "{name: n, model: T, plane: north, at: [24 in, 12 in], orientation: landscape, columns: 6, rows: 3, gap: 0 in}" }
  local narrow = { at = { 24, 12 }, columns = 6, rows = 3, gap = 0, more = blocked }
  local kind, finding = pathway(narrow)
  lu.assertEquals(kind, "fail")
  lu.assertEquals(plumb.test(finding, "Widest clear strip on an adjacent plane, 24 in").actual.value, 24)
  -- The same with the other plane clear: it may lie there, if the book lets it.
  narrow.more = nil
  lu.assertEquals(pathway(narrow), "pass")
  lu.assertEquals(pathway(narrow, "2021", { pathway_adjacent = "no", pathway_straddling = "no" }), "fail")
  lu.assertEquals(pathway({ at = { 36.1, 12 }, columns = 6, rows = 3, gap = 0 }, "2021", { pathway_width = "36.2 in", pathway_adjacent = "no", pathway_straddling = "no" }), "fail")
end

function TestPathways:test_several_on_each_plane()
  local design = { at = { 60, 12 }, columns = 5, rows = 3, gap = 0 } -- 60 in on either side
  lu.assertEquals(pathway(design, "2021", { pathways_per_plane = "2" }), "pass")
  design.at[1] = 100 -- 20 in are left on the right; 100 in on the left hold two
  lu.assertEquals(pathway(design, "2021", { pathways_per_plane = "2" }), "pass")
  design = { at = { 40, 12 }, columns = 6, rows = 3, gap = 0 } -- 40 in and 8 in
  lu.assertEquals(pathway(design, "2021", { pathways_per_plane = "2" }), "fail")
  lu.assertEquals(pathway(design, "2021", { pathways_per_plane = "1" }), "pass")
end

local function roof_rule(design, values)
  local report = plumb.check(roof.design(design), town("2021", values))
  return plumb.find(report, "irc/building-pathways").kind
end

function TestPathways:test_of_the_building()
  local full = "{name: n, model: T, plane: north, at: [24 in, 12 in], orientation: landscape, columns: 6, rows: 3, gap: 0 in}"
  lu.assertEquals(roof_rule({ at = { 60, 12 } }), "pass")
  lu.assertEquals(roof_rule({ at = { 60, 12 }, more = { full } }), "fail") -- one plane only
  lu.assertEquals(roof_rule({ at = { 60, 12 }, more = { full } }, { pathways_per_building = "1" }), "pass")
  lu.assertEquals(roof_rule({ at = { 60, 12 }, faces = "side yard" }), "fail") -- none to street or driveway
  lu.assertEquals(roof_rule({ at = { 60, 12 }, faces = "side yard" }, { pathway_to_street = "no" }), "pass")
  lu.assertEquals(roof_rule({ at = { 60, 12 }, faces = "side yard", north_faces = "driveway" }), "pass")
  lu.assertEquals(roof_rule({ at = { 60, 12 }, slope = "2/12" }), "notApplicable")
end

function TestPathways:test_little_covered_needs_none()
  local full = "{name: n, model: T, plane: north, at: [24 in, 150 in], orientation: landscape, columns: 6, rows: 1, gap: 0 in}"
  local design = { at = { 24, 12 }, columns = 6, rows = 1, gap = 0, more = { full } } -- 264 of 1 600 ft²: 16.5 %
  lu.assertEquals(roof_rule(design), "fail")
  lu.assertEquals(roof_rule(design, { pathway_free_coverage = "16.5 %" }), "pass")
  lu.assertEquals(roof_rule(design, { pathway_free_coverage = "16.4 %" }), "fail")
  lu.assertEquals(roof_rule(design, { pathway_free_coverage = "33 %", pathway_free_area = "263 ft²" }), "fail")
  lu.assertEquals(pathway(design, "2021", { pathway_free_coverage = "16.5 %" }), "pass")
end

TestSetbacks = {}

-- Each kind of edge on its own: the value asks, equality passes, a hair less fails, zero asks nothing.
function TestSetbacks:test_each_edge()
  for _, case in ipairs({
    { "rake", "rake_setback", { at = { 20, 30 }, columns = 3 }, "[eave, rake, ridge, rake]" },
    { "eave", "eave_setback", { at = { 60, 20 }, columns = 3 }, "[eave, rake, ridge, rake]" },
    { "hip", "hip_setback", { at = { 20, 30 }, columns = 3 }, "[eave, hip, ridge, hip]" },
    { "valley", "valley_setback", { at = { 20, 30 }, columns = 3 }, "[eave, valley, ridge, valley]" },
  }) do
    local edge, value, design = case[1], case[2], case[3]
    design.edges = case[4]
    design.more = { "{name: n, model: T, plane: north, at: [60 in, 60 in], orientation: landscape, columns: 1, rows: 1}" }
    local rule = "irc/" .. edge .. "-clearance"
    lu.assertEquals(kind_of(rule, "roof_plane:south", design, "2021"), "notApplicable")
    lu.assertEquals(kind_of(rule, "roof_plane:south", design, "2021", { [value] = "20 in" }), "pass", rule)
    lu.assertEquals(kind_of(rule, "roof_plane:south", design, "2021", { [value] = "20.01 in" }), "fail", rule)
  end
end

function TestSetbacks:test_hip_with_modules_on_one_side()
  local design = { at = { 5, 30 }, columns = 3, edges = "[eave, hip, ridge, hip]" }
  lu.assertEquals(kind_of("irc/hip-clearance", "roof_plane:south", design, "2021", { hip_setback = "18 in" }), "pass")
  lu.assertEquals(kind_of("irc/hip-clearance", "roof_plane:south", design, "2021",
    { hip_setback = "18 in", hip_valley_one_side_free = "no" }), "fail")
end

function TestSetbacks:test_all_around()
  local values = { perimeter_setback = "48 in" }
  local rule = "irc/perimeter-clearance"
  lu.assertEquals(kind_of(rule, "roof_plane:south", { at = { 48, 48 }, columns = 4, rows = 3, gap = 0 }, "2021", values), "pass")
  lu.assertEquals(kind_of(rule, "roof_plane:south", { at = { 47, 48 }, columns = 4, rows = 3, gap = 0 }, "2021", values), "fail")
  lu.assertEquals(kind_of(rule, "roof_plane:south", { at = { 48, 61 }, columns = 4, rows = 3, gap = 0 }, "2021", values), "fail")
end

TestSize = {}

function TestSize:test_area_share_and_sections()
  local rule, about = "irc/array-size", "roof_plane:south"
  lu.assertEquals(kind_of(rule, about, third), "notApplicable")
  lu.assertEquals(kind_of(rule, about, third, "2021", { array_area_limit = "528 ft²" }), "pass")
  lu.assertEquals(kind_of(rule, about, third, "2021", { array_area_limit = "527.9 ft²" }), "fail")
  lu.assertEquals(kind_of(rule, about, third, "2021", { array_coverage_limit = "33 %" }), "pass")
  lu.assertEquals(kind_of(rule, about, third, "2021", { array_coverage_limit = "32.9 %" }), "fail")
  lu.assertEquals(kind_of(rule, about, third, "2021", { array_section_limit = "36 ft" }), "pass")
  lu.assertEquals(kind_of(rule, about, third, "2021", { array_section_limit = "35.9 ft" }), "fail")
  -- Two sections, once the gap between them is wide enough.
  local parted = { at = { 12, 46 }, columns = 3, rows = 2, gap = 0,
    more = { "{name: o, model: T, plane: south, at: [264 in, 46 in], orientation: landscape, columns: 2, rows: 2, gap: 0 in}" } }
  lu.assertEquals(kind_of(rule, about, parted, "2021", { array_section_limit = "20 ft", array_section_gap = "36 in" }), "pass")
  lu.assertEquals(kind_of(rule, about, parted, "2021", { array_section_limit = "20 ft", array_section_gap = "36.1 in" }), "fail")
end

function TestSize:test_height()
  local rule = "irc/array-height"
  local function kind(design, values)
    local report = plumb.check(roof.design(design), town("2021", values))
    return plumb.find(report, rule).kind
  end
  lu.assertEquals(kind({}), "pass")
  lu.assertEquals(kind({ height = 4 }), "fail") -- the space below cannot reach their top
  lu.assertEquals(kind({}, { array_height_limit = "6 in" }), "pass")
  lu.assertEquals(kind({ height = 6.1 }, { array_height_limit = "6 in" }), "fail")
  lu.assertEquals(kind({}, { array_gap_least = "4 in", array_gap_most = "4 in" }), "pass")
  lu.assertEquals(kind({}, { array_gap_least = "4.1 in" }), "fail")
  lu.assertEquals(kind({}, { array_gap_most = "3.9 in" }), "fail")
end

function TestSize:test_conduit()
  local rule, about = "irc/conduit-zone", "circuit:run"
  lu.assertEquals(kind_of(rule, about, {}), "notApplicable")
  lu.assertEquals(kind_of(rule, about, { conduit = 36 }, "2021", { conduit_ridge_distance = "36 in" }), "pass")
  lu.assertEquals(kind_of(rule, about, { conduit = 35 }, "2021", { conduit_ridge_distance = "36 in" }), "fail")
end

TestEscape = {}

function TestEscape:test_below_the_opening()
  local rule, about = "irc/escape-opening", "escape_opening:window"
  local function window(x) return ("[{name: window, plane: south, at: [%d in, 200 in], width: 36 in}]"):format(x) end
  for _, edition in ipairs({ "2018", "2021", "2024" }) do
    lu.assertEquals(kind_of(rule, about, { at = { 60, 12 }, columns = 3, escape = window(300) }, edition), "pass")
    lu.assertEquals(kind_of(rule, about, { at = { 60, 12 }, columns = 3, escape = window(100) }, edition), "fail")
  end
  lu.assertEquals(kind_of(rule, about, { at = { 60, 12 }, columns = 3, escape = window(300), roof_operations = "no" }), "notApplicable")
end

TestFireCode = {}

function TestFireCode:test_editions_differ()
  -- One strip of 60 in: enough for the 2018 rule where it holds, one too few for a single ridge in 2012 and 2015.
  local design = { at = { 12, 12 }, columns = 5, rows = 3, gap = 0 }
  for _, edition in ipairs({ "2012", "2015" }) do
    lu.assertEquals(kind_of("ifc/ridge-clearance", "roof_plane:south", { at = { 60, 72 }, rows = 3, gap = 0 }, edition, nil, "ifc"), "pass")
    lu.assertEquals(kind_of("ifc/ridge-clearance", "roof_plane:south", { at = { 60, 73 }, rows = 3, gap = 0 }, edition, nil, "ifc"), "fail")
    lu.assertEquals(kind_of("ifc/access-pathway", "roof_plane:south", { at = { 60, 12 }, columns = 5, rows = 3, gap = 0 }, edition, nil, "ifc"), "pass")
    lu.assertEquals(kind_of("ifc/access-pathway", "roof_plane:south", { at = { 79, 12 }, columns = 5, rows = 3, gap = 0 }, edition, { ifc_pathway_width = "42 in" }, "ifc"), "fail")
  end
  for _, edition in ipairs({ "2018", "2021" }) do
    -- Dwellings are left to the residential code, unless the place strikes that out.
    lu.assertEquals(kind_of("ifc/access-pathway", "roof_plane:south", design, edition, nil, "ifc"), "notApplicable")
    lu.assertEquals(kind_of("ifc/access-pathway", "roof_plane:south", design, edition, { ifc_exempt_residential_code = "no" }, "ifc"), "pass")
    lu.assertEquals(kind_of("ifc/ridge-clearance", "roof_plane:south", third, edition, { ifc_exempt_residential_code = "no" }, "ifc"), "pass")
  end
  local one_path = { at = { 100, 12 }, columns = 5, rows = 3, gap = 0 } -- 100 in hold two, 20 in none
  lu.assertEquals(kind_of("ifc/access-pathway", "roof_plane:south", one_path, "2015", nil, "ifc"), "pass")
  one_path.at = { 60, 12 }
  one_path.columns = 6 -- one module over the edge: the strip on the left alone is left
  lu.assertEquals(kind_of("ifc/access-pathway", "roof_plane:south", one_path, "2015", nil, "ifc"), "fail")
end

function TestFireCode:test_hips_and_valleys()
  local design = { at = { 18, 30 }, columns = 3, gap = 0, edges = "[eave, hip, ridge, hip]", shape = "hip",
    more = { "{name: n, model: T, plane: north, at: [60 in, 60 in], orientation: landscape, columns: 1, rows: 1}" } }
  lu.assertEquals(kind_of("ifc/hip-valley", "roof_plane:south", design, "2012", nil, "ifc"), "pass")
  design.at = { 17, 30 }
  lu.assertEquals(kind_of("ifc/hip-valley", "roof_plane:south", design, "2012", nil, "ifc"), "fail")
  lu.assertEquals(kind_of("ifc/hip-valley", "roof_plane:south", design, "2018", nil, "ifc"), "notApplicable")
  design.more = nil -- modules on one side only
  lu.assertEquals(kind_of("ifc/hip-valley", "roof_plane:south", design, "2012", nil, "ifc"), "pass")
end

function TestFireCode:test_other_occupancies()
  local design = { at = { 48, 48 }, columns = 4, rows = 3, gap = 0, occupancy = "commercial", slope = "1/12" }
  lu.assertEquals(kind_of("ifc/perimeter", "roof_plane:south", design, "2021", nil, "ifc"), "pass")
  design.at = { 47, 48 }
  lu.assertEquals(kind_of("ifc/perimeter", "roof_plane:south", design, "2021", nil, "ifc"), "fail")
  design.occupancy = "one-family dwelling"
  lu.assertEquals(kind_of("ifc/perimeter", "roof_plane:south", design, "2021", nil, "ifc"), "notApplicable")
  -- On a slope like a dwelling's the official may decide otherwise.
  lu.assertEquals(kind_of("ifc/perimeter", "roof_plane:south",
    { at = { 48, 48 }, columns = 4, rows = 3, gap = 0, occupancy = "multifamily" }, "2021", nil, "ifc"), "review")
end

function TestFireCode:test_reach_and_opening()
  local rule, about = "ifc/array-size", "roof_plane:south"
  lu.assertEquals(kind_of(rule, about, third, "2012", nil, "ifc"), "pass")
  lu.assertEquals(kind_of(rule, about, third, "2012", { ifc_array_limit = "35 ft" }, "ifc"), "fail")
  lu.assertEquals(kind_of(rule, about, third, "2018", nil, "ifc"), "notApplicable")
  local escape = "[{name: window, plane: south, at: [100 in, 200 in], width: 36 in}]"
  lu.assertEquals(kind_of("ifc/escape-opening", "escape_opening:window", { escape = escape }, "2015", nil, "ifc"), "notApplicable")
  lu.assertEquals(kind_of("ifc/escape-opening", "escape_opening:window", { escape = escape }, "2018", { ifc_exempt_residential_code = "no" }, "ifc"), "fail")
end

-- Moving the array down never turns a pass at the ridge into a fail; a wider setback never a fail into a pass.
TestMonotony = {}

function TestMonotony:test_ridge_clearance()
  math.randomseed(20260803)
  for _ = 1, 25 do
    local y = math.random(5, 90)
    local setback = math.random(6, 60)
    local design = { at = { 20, y }, columns = 5, rows = 3, gap = 0 }
    local here = ridge(design, "2021", { ridge_setback_small = setback .. " in" })
    design.at = { 20, math.random(1, y) }
    local lower = ridge(design, "2021", { ridge_setback_small = setback .. " in" })
    lu.assertFalse(here == "pass" and lower == "fail", ("y %d, setback %d"):format(y, setback))
    design.at = { 20, y }
    local wider = ridge(design, "2021", { ridge_setback_small = setback + math.random(0, 20) .. " in" })
    lu.assertFalse(here == "fail" and wider == "pass", ("y %d, setback %d"):format(y, setback))
  end
end

-- Removing a column never narrows the widest pathway.
function TestMonotony:test_pathway()
  math.randomseed(20260804)
  for _ = 1, 20 do
    local columns, x = math.random(2, 6), math.random(1, 48)
    local values = { pathway_adjacent = "no", pathway_straddling = "no" }
    local _, all = pathway({ at = { x, 12 }, columns = columns, rows = 3, gap = 0 }, "2021", values)
    local _, fewer = pathway({ at = { x, 12 }, columns = columns - 1, rows = 3, gap = 0 }, "2021", values)
    lu.assertTrue(plumb.test(fewer, "Widest").actual.value >= plumb.test(all, "Widest").actual.value - 1e-6)
  end
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

-- Sixteen local variants of the access rules, each a small book in tests/variants with an invented name. Each is
-- held to the number that makes it differ: what passes the model code fails here, or the other way round.
local lu = require("luaunit")
local plumb = require("plumb")
local roof = require("roof")

local directory = plumb.top .. "/tests/variants"

local function kind_of(book, rule, about, design, on)
  local report = plumb.check(roof.design(design), { books = { book }, directory = directory, on = on })
  lu.assertEquals(report.problems, {}, book)
  return plumb.find(report, rule, about).kind
end

local south = "roof_plane:south"
local function array(x, y, columns, rows, more)
  local design = { at = { x, y }, columns = columns, rows = rows, gap = 0 }
  for name, value in pairs(more or {}) do design[name] = value end
  return design
end
-- The top of `rows` landscape modules 44 in high stands `clear` inches below the ridge (20 ft of slope).
local function below_ridge(clear, columns, rows, more) return array(20, 240 - 44 * rows - clear, columns, rows, more) end

-- Modules 40 in by 20 ft of the second plane, so that the whole roof is more than a third covered.
local much = { more = { "{name: n, model: T, plane: north, at: [60 in, 40 in], orientation: landscape, columns: 4, rows: 4, gap: 0 in}" } }
local one_module_north = { "{name: n, model: T, plane: north, at: [200 in, 60 in], orientation: landscape, columns: 1, rows: 1}" }
local full_north = { "{name: n, model: T, plane: north, at: [24 in, 12 in], orientation: landscape, columns: 6, rows: 3, gap: 0 in}" }

-- A door of 24 in by 40 in whose right side stands 28 in from the rake; a vent beside the modules is none of its business.
local door = "[{name: door, kind: hatch, at: [4 in, 100 in], width: 24 in, length: 40 in, height: 40 in}, {name: vent, kind: vent, at: [95 in, 12 in], width: 3 in, length: 3 in, height: 6 in}]"

-- Book, rule, about, design, kind. Two lines at least for each variant: one inside its number, one just outside.
local cases = {
  -- LV01: 12 in at the ridge up to 1 000 ft², no pathway up to a quarter of the roof, 36 in at the rakes.
  { "hazelmark", "irc/ridge-clearance", south, below_ridge(12, 6, 4), "pass" },
  { "hazelmark", "irc/ridge-clearance", south, below_ridge(11.9, 6, 4), "fail" },
  { "hazelmark", "irc/ridge-clearance", south, below_ridge(30, 5, 4, { length = 80, width = 44, more = {
    "{name: n, model: T, plane: north, at: [20 in, 12 in], orientation: landscape, columns: 5, rows: 5, gap: 0 in}" } }), "fail" }, -- 1 100 ft²
  { "hazelmark", "irc/rake-clearance", south, array(36, 12, 4, 3), "pass" },
  { "hazelmark", "irc/rake-clearance", south, array(35.9, 12, 4, 3), "fail" },
  { "hazelmark", "irc/access-pathway", south, array(24, 12, 6, 3), "pass" }, -- 24.75 %
  { "hazelmark", "irc/building-pathways", "roof:roof", array(24, 12, 6, 4, { more = full_north }), "fail" },
  -- LV02: no pathways up to a third and 1 000 ft²; the ridge keeps 18 in whatever is covered.
  { "ottermarch", "irc/building-pathways", "roof:roof", array(24, 12, 6, 4), "pass" },
  { "ottermarch", "irc/building-pathways", "roof:roof", array(24, 12, 6, 4, { more = full_north }), "fail" },
  { "ottermarch", "irc/ridge-clearance", south, below_ridge(18, 6, 4, much), "pass" },
  { "ottermarch", "irc/ridge-clearance", south, below_ridge(17.9, 6, 4, much), "fail" },
  { "ottermarch", "irc/ridge-clearance", south, below_ridge(5, 6, 4, { sprinklers = "NFPA 13D" }), "notApplicable" },
  { "ottermarch", "irc/ridge-clearance", south, below_ridge(5, 6, 4, { slope = "13/12" }), "notApplicable" },
  -- LV03: one third, from which on 36 in hold; flush to 1 ft above the roof, 2 ft from the eave.
  { "tallgate", "irc/ridge-clearance", south, below_ridge(18, 6, 4), "pass" }, -- 33 % is less than a third
  { "tallgate", "irc/ridge-clearance", south, below_ridge(18, 5, 4, { length = 80, width = 48 }), "fail" }, -- a third
  { "tallgate", "irc/array-height", "racking:racking", { height = 12 }, "pass" },
  { "tallgate", "irc/array-height", "racking:racking", { height = 12.1 }, "fail" },
  { "tallgate", "irc/eave-clearance", south, array(60, 24, 4, 3), "pass" },
  { "tallgate", "irc/eave-clearance", south, array(60, 23, 4, 3), "fail" },
  -- LV04: no exemption holds.
  { "brackwater", "irc/ridge-clearance", south, below_ridge(10, 4, 3, { slope = "1/12" }), "fail" },
  { "brackwater", "irc/ridge-clearance", south, below_ridge(10, 4, 3, { structure = "detached garage" }), "fail" },
  { "brackwater", "irc/ridge-clearance", south, below_ridge(10, 4, 3, { roof_operations = "no" }), "fail" },
  { "brackwater", "irc/ridge-clearance", south, below_ridge(18, 4, 3, { slope = "1/12" }), "pass" },
  -- LV05: 3 ft at ridge and rakes, two pathways, 18 in at valleys with modules on both sides.
  { "sorrel", "irc/ridge-clearance", south, below_ridge(36, 4, 3), "pass" },
  { "sorrel", "irc/ridge-clearance", south, below_ridge(35, 4, 3), "fail" },
  { "sorrel", "irc/access-pathway", south, array(40, 12, 5, 3), "pass" },
  { "sorrel", "irc/access-pathway", south, array(40, 12, 6, 3), "fail" },
  { "sorrel", "irc/valley-clearance", south, array(17, 40, 3, 2, { edges = "[eave, valley, ridge, valley]", more = one_module_north }), "fail" },
  { "sorrel", "irc/valley-clearance", south, array(17, 40, 3, 2, { edges = "[eave, valley, ridge, valley]" }), "pass" },
  -- LV06: 3 ft at the ridge, two pathways, 18 in at hips on both sides.
  { "pinnock", "irc/ridge-clearance", south, below_ridge(36, 4, 3), "pass" },
  { "pinnock", "irc/ridge-clearance", south, below_ridge(35, 4, 3), "fail" },
  { "pinnock", "irc/hip-clearance", south, array(18, 40, 3, 2, { edges = "[eave, hip, ridge, hip]", more = one_module_north }), "pass" },
  { "pinnock", "irc/hip-clearance", south, array(17, 40, 3, 2, { edges = "[eave, hip, ridge, hip]", more = one_module_north }), "fail" },
  -- LV07: 4 ft around each array, none longer than 50 ft.
  { "marlow-basin", "irc/perimeter-clearance", south, array(48, 48, 4, 3), "pass" },
  { "marlow-basin", "irc/perimeter-clearance", south, array(48, 47, 4, 3), "fail" },
  { "marlow-basin", "irc/array-size", south, array(48, 48, 4, 3), "pass" },
  -- LV08: two pathways on each slope, 18 in at hips even with modules on one side only.
  { "sandspit", "irc/access-pathway", south, array(40, 12, 6, 3), "fail" },
  { "sandspit", "irc/access-pathway", south, array(60, 12, 5, 3), "pass" },
  { "sandspit", "irc/hip-clearance", south, array(17, 40, 3, 2, { edges = "[eave, hip, ridge, hip]" }), "fail" },
  { "sandspit", "irc/hip-clearance", south, array(18, 40, 3, 2, { edges = "[eave, hip, ridge, hip]" }), "pass" },
  -- LV09: a path 6 ft wide for each 100 ft of roof, 6 ft about the hinge of a door to the roof. Its 9 ft of height are
  -- for a person to look at.
  { "greatwharf", "greatwharf/path-for-length", south, array(72, 12, 5, 3), "review" },
  { "greatwharf", "greatwharf/path-for-length", south, array(71, 12, 5, 3), "fail" },
  { "greatwharf", "greatwharf/path-for-length", south, array(72, 12, 5, 3, { building_length = "100 ft" }), "review" },
  { "greatwharf", "greatwharf/path-for-length", south, array(72, 12, 5, 3, { building_length = "101 ft" }), "fail" },
  { "greatwharf", "greatwharf/roof-door", south, array(100, 12, 4, 3, { obstructions = door }), "pass" },
  { "greatwharf", "greatwharf/roof-door", south, array(99, 12, 4, 3, { obstructions = door }), "fail" },
  { "greatwharf", "greatwharf/roof-door", south, array(99, 12, 4, 3), "notApplicable" },
  { "greatwharf", "irc/access-pathway", south, array(72, 12, 5, 3, { more = full_north }), "pass" },
  { "greatwharf", "irc/access-pathway", south, array(71, 12, 5, 3, { more = full_north }), "fail" },
  -- LV10: 18 in at the ridge and 18 in of pathway; 6 in above the roof.
  { "pondsedge", "irc/access-pathway", south, array(18, 12, 6, 3, { more = full_north }), "pass" },
  { "pondsedge", "irc/ridge-clearance", south, below_ridge(18, 6, 4, much), "pass" },
  { "pondsedge", "irc/array-height", "racking:racking", { height = 6 }, "pass" },
  { "pondsedge", "irc/array-height", "racking:racking", { height = 6.1 }, "fail" },
  -- LV11: 3 ft at the ridge.
  { "mesaverde-wells", "irc/ridge-clearance", south, below_ridge(36, 4, 3), "pass" },
  { "mesaverde-wells", "irc/ridge-clearance", south, below_ridge(35.9, 4, 3), "fail" },
  -- LV12: 3 ft at the ridge, 2 in to 10 in below the modules, 24 in above the roof.
  { "irongrove", "irc/ridge-clearance", south, below_ridge(35.9, 4, 3), "fail" },
  { "irongrove", "irc/array-height", "racking:racking", { height = 24, below = 10 }, "pass" },
  { "irongrove", "irc/array-height", "racking:racking", { height = 24, below = 10.1 }, "fail" },
  { "irongrove", "irc/array-height", "racking:racking", { below = 1.9 }, "fail" },
  -- LV13: 3 ft at gable ends and ridge, 18 in a side at hips and valleys, no conduit in the strip at the ridge.
  { "quarter-county", "irc/rake-clearance", south, array(36, 12, 4, 3), "pass" },
  { "quarter-county", "irc/rake-clearance", south, array(35, 12, 4, 3), "fail" },
  { "quarter-county", "irc/conduit-zone", "circuit:run", { conduit = 36 }, "pass" },
  { "quarter-county", "irc/conduit-zone", "circuit:run", { conduit = 35 }, "fail" },
  -- LV14: its numbers were found nowhere; the model code's stand.
  { "northmoor", "irc/ridge-clearance", south, below_ridge(18, 4, 3), "pass" },
  { "northmoor", "irc/ridge-clearance", south, below_ridge(17, 4, 3), "fail" },
  -- LV15: 36 in on all sides but the bottom, 18 in at hips and valleys.
  { "drylake", "irc/rake-clearance", south, array(35, 12, 4, 3), "fail" },
  { "drylake", "irc/ridge-clearance", south, below_ridge(36, 4, 3), "pass" },
  { "drylake", "irc/hip-clearance", south, array(17, 40, 3, 2, { edges = "[eave, hip, ridge, hip]", more = one_module_north }), "fail" },
  -- LV16: another way up will do.
  { "ridgeline", "irc/access-pathway", south, array(24, 12, 6, 3), "pass" },
  { "ridgeline", "irc/ridge-clearance", south, below_ridge(10, 4, 3, { roof_operations = "no" }), "notApplicable" },
}

TestVariants = {}

function TestVariants:test_each_case()
  for i, case in ipairs(cases) do
    lu.assertEquals(kind_of(case[1], case[2], case[3], case[4]), case[5], ("case %d: %s %s"):format(i, case[1], case[2]))
  end
end

function TestVariants:test_every_variant_is_there()
  local books = {}
  for _, case in ipairs(cases) do books[case[1]] = true end
  local pipe = assert(io.popen("ls '" .. directory .. "'"))
  local count = 0
  for name in pipe:lines() do
    count = count + 1
    lu.assertTrue(books[name] or false, name)
    lu.assertStrContains(plumb.read(directory .. "/" .. name .. "/book.yaml"), "Local variant LV")
  end
  pipe:close()
  lu.assertEquals(count, 16)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

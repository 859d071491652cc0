-- What is generated from the one table: is it fresh, and does a validator that is not ours agree?
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestSchema = {}

local function shell(command)
  local pipe = io.popen(command .. " 2>&1")
  local output = pipe:read("a")
  local _, _, code = pipe:close()
  return output, code
end

local function validate(schema, files)
  return shell("python3 " .. plumb.top .. "/tests/schema/validate.py " .. plumb.top .. "/docs/schemas/" .. schema
    .. ".json " .. files)
end

function TestSchema:test_what_is_committed_is_fresh()
  local docs = plumb.folder() .. "/docs"
  local made, code = shell("sh " .. plumb.top .. "/docs/reference/make.sh " .. plumb.program .. " " .. docs .. " "
    .. plumb.top .. "/rules")
  lu.assertEquals({ made, code }, { "", 0 })
  for _, folder in ipairs({ "schemas", "reference" }) do
    local difference = shell("diff -rq -x make.sh " .. plumb.top .. "/docs/" .. folder .. " " .. docs .. "/" .. folder)
    lu.assertEquals(difference, "", "stale: sh docs/reference/make.sh makes it anew")
  end
end

function TestSchema:test_samples_books_values_and_cases_fit()
  local top = plumb.top
  for schema, files in pairs({ design = top .. "/samples/*/*.yaml", book = top .. "/rules/*/*/book.yaml",
    values = top .. "/rules/*/*/values.yaml", cases = top .. "/rules/*/*/cases/*.yaml" }) do
    local output, code = validate(schema, files)
    lu.assertEquals({ output, code }, { "", 0 }, schema)
  end
end

function TestSchema:test_results_fit()
  for _, name in ipairs({ "standing", "failing", "unfinished" }) do
    local path = plumb.folder() .. "/" .. name .. ".json"
    plumb.run({ "check", plumb.top .. "/samples/quill-hollow/" .. name .. ".yaml", "--book", "marrow-bay", "--format",
      "json", "-w", "-o", path })
    local output, code = validate("result", path)
    lu.assertEquals({ output, code }, { "", 0 }, name)
  end
  local path = plumb.folder() .. "/unread.json"
  plumb.run({ "check", plumb.folder() .. "/none.yaml", "--book", "marrow-bay", "--format", "json", "-o", path })
  local output, code = validate("result", path)
  lu.assertEquals({ output, code }, { "", 0 })
end

-- A schema that takes anything proves nothing.
function TestSchema:test_mistakes_do_not_fit()
  local wrong = {
    { "design", "title: x\nsite: {exposur: B}\n", "exposur" },
    { "design", "title: x\nsite: {exposure: E}\n", "exposure" },
    { "design", "title: x\nroof: {planes: [{slope: 4/12}]}\n", "planes" },
    { "design", "title: x\nroof: {planes: [{name: a, layers: 99}]}\n", "planes" },
    { "design", "title: x\nsite: {elevation: high}\n", "elevation" },
    { "design", "title: x\nproject: {planned_start: soon}\n", "planned_start" },
    { "book", "book: x\ntitle: x\nmaintained_by: x\n", "scope" },
    { "book", "book: x\ntitle: x\nmaintained_by: x\nscope: x\nrole: king\n", "role" },
    { "values", "a: {kind: lenght, entries: [{from: 2020-01-01, is: 1 in, cite: x}]}\n", "lenght" },
    { "values", "a: {kind: length}\n", "length" },
    { "values", "a: [{from: 2020-01-01, is: 1 in}]\n", "2020" },
    { "cases", "rule: a/b\ncases: [{says: x}]\n", "expect" },
    { "cases", "rule: a/b\ncases: [{says: x, expect: {kind: passes}}]\n", "passes" },
  }
  for _, one in ipairs(wrong) do
    local path = plumb.folder() .. "/wrong.yaml"
    plumb.write(path, one[2])
    local output, code = validate(one[1], path)
    lu.assertEquals(code, 1, one[2])
    lu.assertStrContains(output, one[3])
  end
end

-- Every word of a rule but the units has its sentence; and what has none is a unit.
function TestSchema:test_words()
  local std = load(plumb.read(plumb.top .. "/docs/schemas/luacheck.lua"))().read_globals
  local page = plumb.read(plumb.top .. "/docs/reference/words.md")
  local units = {}
  for unit in page:match("## Units.-There are:(.-)%.\n"):gmatch("`(%w+)`") do units[unit] = true end
  for _, unit in ipairs({ "inch", "ft", "A", "V", "psf", "deg", "delta_C" }) do
    if unit ~= "delta_C" then lu.assertTrue(units[unit], unit) end
    lu.assertNotNil(std[unit], unit)
  end
  for _, word in ipairs({ "shall", "same", "review", "print", "math", "print", "and" }) do
    lu.assertNil(units[word], word)
  end
  lu.assertNotNil(std.shall.fields.meet_one_of)
  lu.assertNil(std.should.fields.meet_one_of)
  lu.assertNotNil(std.calc.fields.ampacity)
  lu.assertNil(std.print)
end

function TestSchema:test_stubs_are_lua()
  local text = plumb.read(plumb.top .. "/docs/schemas/plumbrule.lua")
  lu.assertNotNil(load(text))
  lu.assertStrContains(text, "---@field slope plumbrule.quantity")
  lu.assertStrContains(text, "---@class (exact) plumbrule.roof_plane")
  lu.assertStrContains(text, "---@field clearance fun(self")
end

function TestSchema:test_pages_tell_each_kind_fact_and_rule()
  local schema = cjson.decode(plumb.read(plumb.top .. "/docs/schemas/design.json"))
  local facts = plumb.read(plumb.top .. "/docs/reference/facts.md")
  for kind, definition in pairs(schema["$defs"]) do
    if definition.properties and definition.description then
      lu.assertStrContains(facts, "\n## " .. kind .. "\n")
      for fact in pairs(definition.properties) do
        if fact ~= "name" then lu.assertStrContains(facts, "| `" .. fact .. "` |") end
      end
    end
  end
  lu.assertStrContains(plumb.read(plumb.top .. "/docs/reference/rules/irc/README.md"), "[ridge-clearance](ridge-clearance.md)")
  lu.assertStrContains(plumb.read(plumb.top .. "/docs/reference/rules/irc/ridge-clearance.md"), "# irc/ridge-clearance\n")
end

function TestSchema:test_the_page_of_one_rule()
  local by_name = plumb.run({ "schema", "rules", "irc/ridge-clearance" })
  lu.assertStrContains(by_name, "# irc/ridge-clearance\n")
  lu.assertNotStrContains(by_name, "# irc/roof-layers")
  lu.assertEquals(plumb.run({ "schema", "rules", plumb.top .. "/rules/codes/irc/ridge-clearance" }), by_name)
  lu.assertEquals(plumb.run({ "schema", "rules", plumb.top .. "/rules/codes/irc" }), (plumb.run({ "schema", "rules", "irc" })))
  local _, code, errors = plumb.run({ "schema", "rules", "irc/ridge" })
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "irc has no rule ridge")
end

function TestSchema:test_the_command_line()
  local _, code, errors = plumb.run({ "schema" })
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "calculators")
  _, code, errors = plumb.run({ "schema", "desing" })
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "did you mean 'design'")
  _, code = plumb.run({ "schema", "rules" })
  lu.assertEquals(code, 64)
  _, code = plumb.run({ "schema", "design", "more" })
  lu.assertEquals(code, 64)
  _, code = plumb.run({ "schema", "rules", "no-such-book" })
  lu.assertEquals(code, 3)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

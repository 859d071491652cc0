-- The fuzzers' dictionaries know every key that a design can have, by the schema that the program itself writes.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestFuzzWords = {}

-- Keys of all things, wherever in the schema they stand.
local function add_keys(keys, schema)
  for name, part in pairs(schema) do
    if name == "properties" then
      for key in pairs(part) do keys[key] = true end
    end
    if type(part) == "table" then add_keys(keys, part) end
  end
end

local function keys_of_a_design()
  local text, code = plumb.run({ "schema", "design" })
  lu.assertEquals(code, 0)
  local keys, list = {}, {}
  add_keys(keys, cjson.decode(text))
  for key in pairs(keys) do list[#list + 1] = key end
  table.sort(list)
  return list
end

local function missing_from(dictionary)
  local text, missing = plumb.read(plumb.top .. "/tests/fuzz/" .. dictionary), {}
  for _, key in ipairs(keys_of_a_design()) do
    if not text:find('\n"' .. key .. ': "\n', 1, true) then missing[#missing + 1] = key end
  end
  return table.concat(missing, " ")
end

function TestFuzzWords:test_a_design_has_many_keys() lu.assertTrue(#keys_of_a_design() > 400) end

function TestFuzzWords:test_that_of_designs() lu.assertEquals(missing_from("design.dict"), "") end

function TestFuzzWords:test_that_of_whole_runs() lu.assertEquals(missing_from("whole.dict"), "") end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

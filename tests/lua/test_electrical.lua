-- The electrical book: for every rule at least one design that passes, one that fails and one that is open.
local lu = require("luaunit")
local plumb = require("plumb")
local electrical = require("electrical")

TestElectrical = {}

for _, group in ipairs { "electrical_array", "electrical_service", "electrical_labels" } do
  for i, row in ipairs(require(group)) do
    local name = ("test_%s_%03d_%s_%s"):format(group, i, row.rule:gsub("%W", "_"), row.kind)
    TestElectrical[name] = function() electrical.check(row) end
  end
end

-- Runs last: LuaUnit goes by name.
function TestElectrical.test_z_every_rule_passes_fails_and_waits_somewhere()
  local files = assert(io.popen("ls '" .. plumb.top .. "/rules/codes/nec'"))
  local missing, rules = {}, 0
  for file in files:lines() do
    local rule = file:match("^(.+)%.lua$")
    if rule then
      rules = rules + 1
      for _, kind in ipairs { "pass", "fail", "open" } do
        if not (electrical.seen["nec/" .. rule] or {})[kind] then missing[#missing + 1] = rule .. ": " .. kind end
      end
    end
  end
  files:close()
  lu.assertEquals(missing, {})
  lu.assertTrue(rules >= 75)
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

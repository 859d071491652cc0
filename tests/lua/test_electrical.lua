-- The electrical book: for every rule at least one design that passes, one that fails and one that is open.
local lu = require("luaunit")
local plumb = require("plumb")
local electrical = require("electrical")

TestElectrical = {}

for _, group in ipairs { "electrical_array", "electrical_service", "electrical_labels", "electrical_utility" } do
  for i, row in ipairs(require(group)) do
    local name = ("test_%s_%03d_%s_%s"):format(group, i, row.rule:gsub("%W", "_"), row.kind)
    TestElectrical[name] = function() electrical.check(row) end
  end
end

-- Runs last: LuaUnit goes by name.
function TestElectrical.test_z_every_rule_passes_fails_and_waits_somewhere()
  local missing, rules = {}, 0
  for book, folder in pairs { nec = "codes/nec", ["sallow-point"] = "utilities/sallow-point" } do
    local files = assert(io.popen("ls '" .. plumb.top .. "/rules/" .. folder .. "'"))
    for file in files:lines() do
      local name = file:match("^(.+)%.lua$")
      local seen = name and electrical.seen[book .. "/" .. name] or {}
      rules = rules + (name and 1 or 0)
      for _, kind in ipairs { "pass", "fail", "open" } do
        if name and not seen[kind] then missing[#missing + 1] = ("%s/%s: %s"):format(book, name, kind) end
      end
    end
    files:close()
  end
  table.sort(missing)
  lu.assertEquals(missing, {})
  lu.assertTrue(rules >= 90)
end

-- The three sample houses, each of another kind, stand in their town and with their utility.
function TestElectrical.test_three_houses_stand()
  for _, name in ipairs { "quill", "tern", "moss" } do
    local report = electrical.report { rule = name, design = name, books = { "nec@2023", "sallow-point" } }
    lu.assertEquals({ name, report.exit, report.counts.failing_should }, { name, 0, 0 })
  end
end

-- What the book cannot judge whole is a person's: never a silent pass, and the sentence says what to look at.
function TestElectrical.test_split_buses_and_storage_are_told_to_a_person()
  local cell = "other_sources:\n  - {name: cell, kind: storage, output_current: 24 A, parallel: no, interlocked: yes, listings: [UL 9540]}"
  for _, row in ipairs {
    { "nec/panel-kind", "panel:main", { "split_bus: no", "split_bus: yes" }, "bus is split" },
    { "nec/other-source", "source:cell", { "other_sources: none", cell }, "Storage" },
  } do
    for _, edition in ipairs { 2017, 2020, 2023 } do
      local report = electrical.report { rule = row[1], design = "quill", change = { row[3] }, book = "nec@" .. edition }
      local finding = plumb.find(report, row[1], row[2])
      lu.assertEquals({ row[1], finding.kind }, { row[1], "review" })
      lu.assertStrContains(finding.message, row[4])
      lu.assertTrue(report.exit == 1 or report.exit == 2, row[1])
    end
  end
end

-- Beside the tests above, the books carry cases of their own.
function TestElectrical.test_the_cases_of_both_books_come_out_as_written()
  for book, least in pairs { nec = 700, ["sallow-point"] = 20 } do
    local output = plumb.run { "prove", book }
    local cases = tonumber(output:match("rules, (%d+) cases, all as expected"))
    lu.assertNotNil(cases, output:sub(1, 400))
    lu.assertTrue(cases >= least)
  end
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

-- Rows of electrical tests: a sample, what is changed in its text, and the finding that must come of it.
local lu = require("luaunit")
local plumb = require("plumb")

local electrical = { seen = {} }

local places = {
  tern = "three-roofs/tern-lane", -- string inverter, supply side
  moss = "three-roofs/moss-end", -- microinverters, a panel of their own
  quill = "quill-hollow/standing", -- DC-to-DC converters, load side
}

function electrical.text(name) return plumb.read(plumb.top .. "/samples/" .. places[name] .. ".yaml") end

-- A catalogue beside the design goes before the samples': there one model is changed.
local function write_catalogue(file, model, changes)
  local text = plumb.read(plumb.top .. "/samples/catalogue/" .. file .. ".yaml")
  local first = assert(text:find("- name: " .. model .. "\n", 1, true), model)
  local after = text:find("\n  - name: ", first, true) or #text
  local block = text:sub(first, after)
  for _, change in ipairs(changes) do block = plumb.change(block, change[1], change[2]) end
  plumb.write(plumb.folder() .. "/" .. file .. ".yaml", text:sub(1, first - 1) .. block .. text:sub(after + 1))
end

-- row: rule, kind, design (a sample's name or `text`), change = {{old, new [, times]}, …},
-- model = {catalogue file, model, changes}, book, about, what, actual, limit, margin, missing, level.
function electrical.report(row)
  local text = row.text or electrical.text(row.design)
  for _, change in ipairs(row.change or {}) do text = plumb.change(text, change[1], change[2], change[3]) end
  if row.model then write_catalogue(table.unpack(row.model)) end
  local report = plumb.check(text, { books = row.books or { row.book or "nec@2023" } })
  if row.model then os.remove(plumb.folder() .. "/" .. row.model[1] .. ".yaml") end
  lu.assertEquals(report.problems, {}, row.rule)
  return report
end

local function note(rule, kind)
  electrical.seen[rule] = electrical.seen[rule] or {}
  electrical.seen[rule][kind] = true
end

local function near(is, expected, row, part)
  if expected == nil then return end
  local name = ("%s, %s: %s"):format(row.rule, row.kind, part)
  if type(expected) ~= "number" then
    lu.assertEquals(is, expected, name)
  else
    lu.assertNotNil(is, name)
    lu.assertAlmostEquals(is, expected, math.max(1e-9, 1e-4 * math.abs(expected)), name)
  end
end

function electrical.check(row)
  local finding = plumb.find(electrical.report(row), row.rule, row.about)
  local name = row.rule .. ", " .. row.kind
  lu.assertEquals(finding.kind, row.kind, name .. ": " .. finding.message)
  if row.kind == "fail" then lu.assertEquals(finding.level, row.level or "error", name) end
  if row.kind == "open" then
    local facts = {}
    for _, one in ipairs(finding.missing) do facts[#facts + 1] = one.fact end
    lu.assertStrContains(table.concat(facts, ", "), row.missing, name)
    lu.assertTrue(finding.missing[1].place.line > 0, name)
  elseif row.what then
    local test = plumb.test(finding, row.what)
    near(test.actual and test.actual.value, row.actual, row, "actual")
    near(test.limit and test.limit.value, row.limit, row, "limit")
    near(test.margin, row.margin, row, "margin")
    if not row.any and (row.kind == "pass" or row.kind == "fail") then lu.assertEquals(test.kind, row.kind, name) end
  end
  note(row.rule, row.kind)
end

-- Short forms for the tables.
function electrical.pass(rule, design, about, what, actual, limit, margin, more)
  local row = more or {}
  row.rule, row.kind, row.design, row.about = rule, "pass", design, about
  row.what, row.actual, row.limit, row.margin = what, actual, limit, margin
  return row
end

function electrical.fail(rule, design, about, change, what, actual, limit, margin, more)
  local row = electrical.pass(rule, design, about, what, actual, limit, margin, more)
  row.kind, row.change = "fail", change
  return row
end

function electrical.open(rule, design, about, change, missing, more)
  local row = more or {}
  row.rule, row.kind, row.design, row.about, row.change, row.missing = rule, "open", design, about, change, missing
  return row
end

return electrical

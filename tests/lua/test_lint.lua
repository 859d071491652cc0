-- Lint: rules read without running them.
local lu = require("luaunit")
local plumb = require("plumb")

TestLint = {}

local values = [[
meter_distance:
  kind: length
  stricter: smaller
  says: how far the utility's disconnect may stand from the meter
  entries: [{from: 2020-01-01, is: 10 ft, cite: Ordinance 1}]
]]
local rule = [[
return {
  title = "Disconnect near the meter", cite = "Ordinance 1", about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("utility") end,
  check = function(disconnect, book)
    shall.not_exceed("Distance to the meter", disconnect.distance_to_meter, book.meter_distance)
  end,
}
]]
local cases = "rule: town/near-meter\ngiven: quill-hollow/standing\non: 2026-08-03\ncases:\n"
  .. "  - {says: one, expect: {kind: pass}}\n"

local function book(options)
  local folder = plumb.folder() .. "/town"
  os.execute("rm -rf '" .. folder .. "' && mkdir -p '" .. folder .. "/cases'")
  plumb.write(folder .. "/book.yaml", "book: town\ntitle: A town\nmaintained_by: Building Department\n"
    .. "role: authority\nscope: dwellings\n" .. (options.more or ""))
  plumb.write(folder .. "/values.yaml", options.values or values)
  plumb.write(folder .. "/near-meter.lua", options.rule or rule)
  if options.cases ~= false then plumb.write(folder .. "/cases/near-meter.yaml", options.cases or cases) end
  return folder
end

local function lint(options)
  local output, code, errors = plumb.run({ "lint", book(options) })
  return output, code, errors
end

function TestLint:test_a_clean_book()
  local output, code, errors = lint({})
  lu.assertEquals({ output, code, errors }, { "Nothing is amiss.\n", 0, "" })
end

-- A change of the rule's text, what is then told, and at which line.
function TestLint:test_each_mistake_has_its_place()
  local mistakes = {
    { "disconnect.distance_to_meter,", "disconnect.distanc_to_meter,", "a disconnect has no 'distanc_to_meter'; did you mean 'distance_to_meter'?", 5 },
    { "disconnect.role:is", "disconnect.rol:is", "a disconnect has no 'rol'; did you mean 'role'?", 3 },
    { 'is("utility")', 'is("utlity")', "'utlity' is no word for role; did you mean 'utility'?", 3 },
    { 'is("utility")', 'is("shutdown")', "'shutdown' is no word for role; did you mean 'rapid shutdown'?", 3 },
    { "book.meter_distance)", "book.meter_distanc)", "no book declares a value 'meter_distanc'; did you mean 'meter_distance'?", 5 },
    { "function(disconnect, book)\n", "function(disconnect, book, design)\n    for _, plane in ipairs(design.roof.planes) do shall.be(\"x\", plane.layrs) end\n", "a roof_plane has no 'layrs'; did you mean 'layers'?", 5 },
    { "function(disconnect, book)\n", "function(disconnect, book, design)\n    local site = design.site\n    shall.be(\"x\", site.exposur:is(\"B\"))\n", "a site has no 'exposur'; did you mean 'exposure'?", 6 },
    { "function(disconnect, book)\n", "function(disconnect, book, design)\n    shall.be(\"x\", design.panels[1].main_lugs)\n", "a panel has no 'main_lugs'", 5 },
    { "shall.not_exceed(", "shall.not_excede(", "luacheck", 5, "not_excede" },
    { "shall.not_exceed(", "print(1) shall.not_exceed(", "luacheck", 5, "print" },
    { "    shall", "    local unused = 1\n    shall", "luacheck", 5, "unused" },
  }
  for _, one in ipairs(mistakes) do
    local output, code = lint({ rule = plumb.change(rule, one[1], one[2]) })
    lu.assertEquals(code, 1, one[2])
    local flat = output:gsub("%s+", " ")
    lu.assertStrContains(flat, "near-meter.lua:" .. one[4] .. ":", nil, one[2])
    lu.assertStrContains(flat, one[5] or one[3])
  end
end

function TestLint:test_a_number_for_a_value_of_nobody()
  local more = "values:\n  ridge_setbak_small: [{from: 2026-01-01, is: 24 in, cite: Ordinance 1}]\n  ridge_setback_large: [{from: 2026-01-01, is: 48 in, cite: Ordinance 1}]\n"
  local output, code = lint({ more = more })
  local flat = output:gsub("%s+", " ")
  lu.assertEquals({ code, select(2, flat:gsub("no book declares", "")) }, { 1, 1 })
  lu.assertStrMatches(flat, ".*/book%.yaml:%d+:3: note: no book declares a value 'ridge_setbak_small'; did you mean 'ridge_setback_small'%?.*")
end

-- A rule as `new rule` lays it out takes more than it uses: that is no mistake.
function TestLint:test_arguments_that_nothing_uses()
  local output, code = lint({ rule = plumb.change(rule, "function(disconnect, book)\n", "function(disconnect, book, design)\n") })
  lu.assertEquals({ output, code }, { "Nothing is amiss.\n", 0 })
end

-- A value that the rules compare with an amount is one itself.
function TestLint:test_a_number_beside_an_amount()
  local output, code = lint({ values = values:gsub("kind: length", "kind: number"):gsub("10 ft", "10") })
  lu.assertEquals(code, 1)
  lu.assertStrContains((output:gsub("%s+", " ")), "near-meter.lua:5:82: note: the value meter_distance is declared with kind: number and cannot be "
    .. "compared with distance_to_meter, which needs kind: length and a unit behind the number")
  -- a factor of an amount is a number
  output = lint({ values = values:gsub("kind: length", "kind: number"):gsub("10 ft", "10"),
    rule = plumb.change(rule, "book.meter_distance)", "book.meter_distance * ft)") })
  lu.assertEquals(output, "Nothing is amiss.\n")
  output, code = lint({ values = values:gsub("kind: length", "kind: pressure"):gsub("10 ft", "10 psf") })
  lu.assertEquals({ code, plumb.count(output, "needs kind: length") }, { 1, 1 })
end

-- What check would say on one of the days that the book knows, lint says at once: each once, however many days show it.
function TestLint:test_what_no_day_can_hold()
  local more = "adopts:\n  - {book: irc, from: 2026-01-01, cite: Ordinance 1}\n  - {book: nec, edition: 2022, from: 2026-01-01, cite: Ordinance 1}\n"
    .. "  - {book: asec, edition: 7-16, from: 2027-01-01, cite: Ordinance 1}\nvalues:\n"
    .. "  ground_snow_load: [{from: 2026-01-01, is: 40, cite: Ordinance 1}, {from: 2027-01-01, is: 50 psf, cite: Ordinance 1}]\n"
    .. "  ridge_setback_small: [{from: 2026-01-01, edition: 2021, is: 24 psf, cite: Ordinance 1}]\n"
  local output, code = lint({ more = more })
  lu.assertEquals(code, 3)
  for _, said in ipairs {
    "book.yaml:7:5: irc comes in editions, so one must be named: 2018, 2021, 2024",
    "book.yaml:8:5: nec has no edition 2022; its editions are",
    "book.yaml:9:5: there is no book asec; did you mean asce?",
    'book.yaml:11:45: the value ground_snow_load: "40" has no unit; a pressure is needed',
    "book.yaml:12:63: the value ridge_setback_small: ",
    "is: 24 psf, cite: Ordinance 1}]\n", -- the line itself
    "    for example: is: 40 psf\n",
  } do
    lu.assertEquals(plumb.count(output, said), 1, said .. output)
  end
  -- a value that nobody declares is told once, too
  output = lint({ more = "adopts: [{book: irc, edition: 2021, from: 2026-01-01, cite: Ordinance 1}]\nvalues:\n"
    .. "  ridge_setbak_small: [{from: 2026-01-01, edition: 2021, is: 24 in, cite: Ordinance 1}]\n" })
  lu.assertEquals(plumb.count(output, "did you mean"), 1, output)
  -- an amendment that a later edition leaves behind, on a day to come
  output, code = lint({ more = "adopts:\n  - {book: irc, edition: 2021, from: 2026-01-01, cite: Ordinance 1}\n"
    .. "  - {book: irc, edition: 2024, from: 2028-01-01, cite: Ordinance 2}\nvalues:\n"
    .. "  ridge_setback_small: [{from: 2026-01-01, edition: 2021, is: 24 in, cite: Ordinance 1}]\n" })
  lu.assertEquals(code, 3)
  lu.assertStrContains((output:gsub("%s+", " ")), "2028-01-01")
end

function TestLint:test_what_is_no_mistake()
  local fine = {
    "local function far(disconnect) return disconnect.anything end far({})",
    "for _, string in ipairs(design.strings) do shall.be(string:called(), string.modules:count() > 0) end",
    "-- disconnect.nothing and book.nothing stand in a comment",
    "shall.be(\"disconnect.nothing\", true)",
    "shall.be('it\\'s disconnect.nothing', true)",
    "--[[ disconnect.nothing\n and book.nothing ]] shall.be([[disconnect.nothing]], true)",
    "--[==[ disconnect.nothing ]] and\n book.nothing ]==] shall.be([=[\ndisconnect.nothing ]] ]=], true)",
    "local serves = design.panels[1].fed_from shall.be(\"x\", serves)",
  }
  for _, line in ipairs(fine) do
    local text = plumb.change(rule, "function(disconnect, book)\n", "function(disconnect, book, design)\n    " .. line
      .. "\n    shall.be(design.title, true)\n")
    local output, code = lint({ rule = text })
    lu.assertEquals({ output, code }, { "Nothing is amiss.\n", 0 }, line)
  end
end

function TestLint:test_values_cases_dates_and_citations()
  local output, code = lint({ values = values .. "unread:\n  kind: yes or no\n  says: nobody asks\n"
    .. "  entries: [{from: 2020-01-01, is: yes, cite: Ordinance 1}]\n" })
  lu.assertEquals(code, 1)
  lu.assertStrContains(output, "values.yaml:6:1: note: no rule of any book reads the value unread")
  output = lint({ cases = false })
  lu.assertStrContains(output, "no case fires the rule town/near-meter")
  output = lint({ values = values:gsub("%[{from: 2020", "[{from: 2024-01-01, is: 8 ft, cite: Ordinance 2}, {from: 2020") })
  lu.assertStrContains(output, "values.yaml:5")
  lu.assertStrContains(output, "begins before the one above it")
  output = lint({ more = "adopts: [{book: osha, from: 2020-01-01}]\n" })
  lu.assertStrContains((output:gsub("%s+", " ")), "book.yaml:6:10: note: this adoption does not say which ordinance")
end

function TestLint:test_what_cannot_be_read_keeps_its_code()
  local output, code = lint({ rule = plumb.change(rule, 'cite = "Ordinance 1", ', "") })
  lu.assertEquals(code, 4)
  lu.assertStrContains(output, "the card needs cite")
  local _, unread, errors = plumb.run({ "lint", "no-such-town" })
  lu.assertEquals(unread, 3)
  lu.assertEquals(errors, "")
  _, code = plumb.run({ "lint" })
  lu.assertEquals(code, 64)
end

-- Without luacheck the rest still runs.
function TestLint:test_without_luacheck()
  local folder = book({ rule = plumb.change(rule, "disconnect.role", "disconnect.rol") })
  local pipe = io.popen("PATH=/nowhere " .. plumb.program .. " lint '" .. folder .. "' 2>&1")
  local output = pipe:read("a")
  pipe:close()
  local flat = output:gsub("%s+", " ")
  lu.assertStrContains(flat, "luacheck could not be run")
  lu.assertStrContains(flat, "a disconnect has no 'rol'")
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

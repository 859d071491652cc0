-- plumbrule draw: what is not as in the samples. A book of the test's own fails what it is asked to.
local lu = require("luaunit")
local plumb = require("plumb")

TestDrawOdd = {}

local folder

-- A book with a rule for each kind: `check` in the words of rules.
local function book(rules)
  os.execute(("rm -rf '%s/town' && mkdir -p '%s/town'"):format(folder, folder))
  plumb.write(folder .. "/town/book.yaml", "book: town\ntitle: Town\nmaintained_by: nobody\nrole: authority\nscope: roofs\n")
  for about, check in pairs(rules) do
    plumb.write(("%s/town/%s.lua"):format(folder, about:gsub("_", "-")), ([[
return {
  title = "A look at it",
  cite = "T.1",
  about = "%s",
  applies = function() return true end,
  check = function(it) %s end,
}
]]):format(about, check))
  end
  return folder .. "/town"
end

local function drawn(text, what, rules)
  local path = folder .. "/design.yaml"
  plumb.write(path, text)
  local arguments = { "draw", path, "--what", what, "--catalogues", plumb.top .. "/samples/catalogue" }
  if rules then
    arguments[#arguments + 1] = "--book"
    arguments[#arguments + 1] = book(rules)
  end
  local svg, code, errors = plumb.run(arguments)
  lu.assertEquals({ code, errors }, { 0, "" })
  lu.assertEquals(svg:sub(-7), "</svg>\n")
  return svg
end

local function change(text, ...)
  local pairs_of = { ... }
  for i = 1, #pairs_of, 2 do text = plumb.change(text, pairs_of[i], pairs_of[i + 1]) end
  return text
end

local stack = "- {name: stack, kind: pipe, at: [46 ft, 12 ft], width: 3 in, length: 3 in, height: 12 in}"

function TestDrawOdd:setUp() folder = plumb.folder() end

function TestDrawOdd:test_every_kind_on_the_roof_is_keyed_where_it_lies()
  local kinds = { "roof_plane", "obstruction", "module", "framing", "racking", "rail", "attachment" }
  for _, kind in ipairs(kinds) do
    local svg = drawn(plumb.sample("standing"), "roof", { [kind] = 'shall.be("It is right", false)' })
    lu.assertStrContains(svg, "Fails: A look at it, ")
    -- a disc beside the thing and one in the list
    lu.assertTrue(plumb.count(svg, ">1</text>") >= 2, kind)
  end
end

function TestDrawOdd:test_the_marks_tell_how_it_stands()
  local words = { ['shall.be("It is right", false)'] = "Fails: ", ['should.be("It is right", false)'] = "Fails (a should): ",
    ['review("Look at it")'] = "For review: ", ['shall.not_exceed("Weight", it.guarded and 1 or 0, 2)'] = "Open: " }
  for check, word in pairs(words) do
    lu.assertStrContains(drawn(plumb.sample("standing"), "roof", { obstruction = check }), word .. "A look at it, obstruction ")
  end
end

function TestDrawOdd:test_obstructions_of_any_shape()
  local text = change(plumb.sample("standing"), stack,
    '- {name: chimney, kind: chimney, outline: [[40 ft, 12 ft], [44 ft, 12 ft], [42 ft, 16 ft]], height: 30 in}\n        - {name: untold, kind: vent}')
  local svg = drawn(text, "roof", { obstruction = 'shall.be("It is right", false)' })
  lu.assertStrContains(svg, ">chimney</text>")
  lu.assertNotStrContains(svg, ">untold</text>")
  lu.assertStrContains(svg, ">obstruction</text>") -- in the legend
  lu.assertStrContains(svg, "1 to 2, south/chimney and 1 more")
end

function TestDrawOdd:test_openings_to_escape_by()
  local text = change(plumb.sample("standing"), "escape_openings: none",
    "escape_openings: [{name: window, plane: south, at: [30 ft, 2 ft], width: 36 in}, {name: untold, plane: south}]")
  local svg = drawn(text, "roof")
  lu.assertStrContains(svg, ">escape opening</text>")
  lu.assertEquals(plumb.count(svg, 'stroke="#1f6f78"'), 2) -- the one that is told, and the legend
end

function TestDrawOdd:test_what_lies_nowhere_is_left_out()
  local text = plumb.sample("standing")
  for word, of in pairs { rail = ", length: %d[%d.]* ft}", ["rafter or truss"] = "        first_at: 0 in\n",
    module = "orientation: portrait, " } do
    local less, times = text:gsub(of, word == "rail" and "}" or "")
    lu.assertTrue(times > 0, word)
    lu.assertStrContains(drawn(text, "roof"), ">" .. word .. "</text>")
    lu.assertNotStrContains(drawn(less, "roof"), ">" .. word .. "</text>")
  end
end

-- Of things that stand alike one after another the list says how many there are.
function TestDrawOdd:test_equal_findings_are_one_line_of_the_list()
  local svg = drawn(plumb.sample("standing"), "roof", { module = 'shall.be("It is right", false)' })
  lu.assertStrContains(svg, "1 to 19, low-1-1 and 18 more")
end

-- ---- the one-line ----------------------------------------------------------------------------------------------

function TestDrawOdd:test_combiners_sources_and_parallel_sets()
  local text = change(plumb.sample("standing"), "combiners: none", "combiners: [{name: box, fuse: 15 A}]",
    "other_sources: none", "other_sources: [{name: tank, kind: storage}]")
  text = text:gsub("inverter: inverter%-1, input: 1", "inverter: inverter-1, combiner: box, input: 1")
  text = change(text, "  - name: inverter-run\n", "  - {name: tank-run, role: feeder, carries: [tank], from: tank, to: main}\n" ..
    "  - {name: box-run, role: PV source, carries: [box], from: box, to: inverter-1}\n  - name: inverter-run\n    parallel_sets: 2\n")
  text = text:gsub("    from: string%-%d\n    to: inverter%-1\n", "")
  local svg = drawn(text, "one-line")
  lu.assertStrContains(svg, ">box</text>")
  lu.assertStrContains(svg, ">fuses 15 A</text>")
  lu.assertStrContains(svg, ">tank</text>")
  lu.assertStrContains(svg, ">storage</text>")
  lu.assertStrContains(svg, "2 sets of ")
end

function TestDrawOdd:test_ways_that_no_circuit_tells()
  local text = plumb.sample("standing"):gsub("\ncircuits:\n.-\nservice:\n", "\ncircuits: none\n\nservice:\n")
  text = change(text, "conductors: inverter-run", "conductors: none")
  local svg = drawn(text, "one-line")
  for _, name in ipairs { "string-1", "string-2", "inverter-1", "main", "utility" } do
    lu.assertStrContains(svg, ">" .. name .. "</text>")
  end
  lu.assertStrContains(svg, 'stroke-dasharray="5 3"') -- told by nobody: broken lines
end

function TestDrawOdd:test_what_has_no_way_out_is_named()
  local text = change(plumb.sample("standing"), "strings:\n", "strings:\n  - {name: lost, modules: none}\n")
  lu.assertStrContains(drawn(text, "one-line"), "No way to the utility is told for: lost. They are not drawn.")
end

function TestDrawOdd:test_many_circuits_have_tags_of_two_letters()
  local parts = {}
  for i = 1, 30 do
    parts[#parts + 1] = ("  - {name: load-%d, role: feeder, carries: [p%d], from: p%d, to: main}\n"):format(i, i, i)
  end
  local panels = {}
  for i = 1, 30 do panels[#panels + 1] = ("  - {name: p%d, fed_from: main, feeder: load-%d}\n"):format(i, i) end
  local text = change(plumb.sample("standing"), "circuits:\n", "circuits:\n" .. table.concat(parts), "panels:\n", "panels:\n" .. table.concat(panels))
  local svg = drawn(text, "one-line")
  lu.assertStrContains(svg, ">Z</text>")
  lu.assertStrContains(svg, ">AA</text>")
end

function TestDrawOdd:test_more_than_a_sheet_holds()
  local parts = {}
  for i = 1, 400 do parts[#parts + 1] = ("  - {name: s%d, modules: none, inverter: inverter-1}\n"):format(i) end
  local text = change(plumb.sample("standing"), "strings:\n", "strings:\n" .. table.concat(parts))
  lu.assertStrContains(drawn(text, "one-line"), "There are more circuits than one sheet holds; the schedule below has them all.")
end

-- A panel above feeds the one in the garage: told so or from the array's side, it is the same line.
local function with_a_subpanel(from, to)
  local feeder = ("  - {name: sub-feeder, role: feeder, carries: [sub], from: %s, to: %s, egc_size: 8 AWG, egc_material: aluminum}\n"):format(from, to)
  local text = change(plumb.sample("standing"), "circuits:\n", "circuits:\n" .. feeder, "panels:\n", "panels:\n  - {name: sub, fed_from: main, feeder: sub-feeder}\n")
  return change(text, "    from: inverter-1\n    to: main\n", "    from: inverter-1\n    to: sub\n")
end

function TestDrawOdd:test_a_feeder_told_from_the_panel_above()
  local svg = drawn(with_a_subpanel("main", "sub"), "one-line")
  lu.assertNotStrContains(svg, "lead in a circle")
  lu.assertNotStrContains(svg, "more circuits")
  lu.assertStrContains(svg, ">model Brae H7600</text>")
  lu.assertStrContains(svg, ">EGC 8 AWG Al; N not given</text>") -- copper alone goes without saying
  lu.assertStrContains(svg, ">EGC 10 AWG</text>")
  lu.assertStrContains(drawn(with_a_subpanel("sub", "main"), "one-line"), ">EGC 8 AWG Al; N not given</text>")
end

function TestDrawOdd:test_circuits_that_lead_in_a_circle()
  local text = change(plumb.sample("standing"), "circuits:\n", "circuits:\n  - {name: back, role: inverter output, carries: [inverter-1], from: main, to: cut}\n" ..
    "  - {name: forth, role: inverter output, carries: [inverter-1], from: cut, to: main}\n", "disconnects:\n", "disconnects:\n  - {name: cut, role: AC, of: inverter-1}\n")
  lu.assertStrContains(drawn(text, "one-line"), "The circuits lead in a circle, so that there is no line to draw; the schedule below has them all.")
end

function TestDrawOdd:test_what_is_of_aluminum_or_taken_out_is_told_so()
  local svg = drawn(change(plumb.sample("standing"), "array_egc_material: copper", "array_egc_material: aluminum",
    "  - name: inverter-run\n", "  - name: inverter-run\n    status: removed\n"), "one-line")
  lu.assertStrContains(svg, "equipment ground of the array 6 AWG aluminum")
  lu.assertStrContains(svg, "inverter-1, main (removed)")
end

-- ---- the panel -------------------------------------------------------------------------------------------------

function TestDrawOdd:test_breakers_that_stand_nowhere_or_twice()
  local text = change(plumb.sample("standing"), "- {name: range, duty: load, rating: 50 A, poles: 2, position: 2",
    "- {name: twin, rating: 20 A, position: 2}\n          - {name: far, duty: spare, rating: 20 A, poles: 1, position: 190}\n" ..
    "          - {name: range, duty: load, rating: 50 A, poles: 2, position: 2")
  local svg = drawn(text, "panel", { breaker = 'shall.be("It is right", false)' })
  lu.assertStrContains(svg, ">breaker, duty not given</text>")
  lu.assertStrContains(svg, "20 A, poles not given; serves loads")
  lu.assertStrContains(svg, "range, 50 A: not drawn at space 2")
  lu.assertStrContains(svg, "far, 20 A: not drawn at space 190")
  lu.assertStrContains(svg, 'stroke-dasharray="6 2"')
end

function TestDrawOdd:test_a_panel_without_a_bus()
  local text = change(plumb.sample("standing"), "panels:\n", "panels:\n  - {name: bare, fed_from: main, busbars: none}\n")
  lu.assertStrContains(drawn(text, "panel"), "Panel bare: no bus is given.")
end

function TestDrawOdd:test_currents_of_a_bus_outside_of_ways()
  local svg = drawn(plumb.sample("standing"), "panel", { busbar = 'shall.not_exceed("Load", 1000 * A, it.rating)' })
  lu.assertStrContains(svg, "1000 A against a limit of 225 A")
  lu.assertStrContains(svg, "is not met")
end

-- ---- loads -----------------------------------------------------------------------------------------------------

function TestDrawOdd:test_attachments_are_keyed_among_loads()
  local text = plumb.read(plumb.top .. "/samples/coast-and-summit/fennel-row.yaml")
  local svg = drawn(text, "loads", { attachment = 'shall.be("It holds", false)' })
  lu.assertStrContains(svg, "No wind speed or edition of ASCE 7 is in force here: areas alone are drawn.")
  lu.assertStrContains(svg, "Fails: A look at it, ")
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

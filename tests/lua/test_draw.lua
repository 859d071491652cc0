-- plumbrule draw: what stands in each drawing, and what happens when it cannot be written.
local lu = require("luaunit")
local plumb = require("plumb")

local all = { "roof", "one-line", "panel", "labels", "loads" }

-- Draws a design given as text; options are further words of the command line.
local function draw(text, what, options)
  local path = plumb.folder() .. "/design.yaml"
  plumb.write(path, text)
  local arguments = { "draw", path, "--what", what, "--catalogues", plumb.top .. "/samples/catalogue" }
  for _, word in ipairs(options or { "--book", "marrow-bay" }) do arguments[#arguments + 1] = word end
  return plumb.run(arguments)
end

local function drawn(text, what, options)
  local svg, code, errors = draw(text, what, options)
  lu.assertEquals(code, 0, errors)
  lu.assertEquals(errors, "")
  return svg
end

local function sample(folder, name)
  return plumb.read(("%s/samples/%s/%s.yaml"):format(plumb.top, folder, name))
end

TestDraw = {}

function TestDraw:test_every_drawing_is_one_svg_with_title_and_description()
  for _, what in ipairs(all) do
    local svg = drawn(plumb.sample("standing"), what)
    lu.assertStrContains(svg, '<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg"')
    lu.assertStrContains(svg, ('<title id="%s-title">'):format(what))
    lu.assertStrContains(svg, ('<desc id="%s-desc">'):format(what))
    lu.assertEquals(plumb.count(svg, "<svg"), 1)
    lu.assertEquals(svg:sub(-7), "</svg>\n")
    lu.assertEquals(drawn(plumb.sample("standing"), what), svg) -- the same bytes again
  end
end

function TestDraw:test_the_roof_has_what_lies_on_it()
  local svg = drawn(plumb.sample("standing"), "roof")
  lu.assertEquals(plumb.count(svg, "<title>low-1-"), 10)
  lu.assertEquals(plumb.count(svg, "<title>high-1-"), 9)
  lu.assertStrContains(svg, ">stack</text>")
  lu.assertStrContains(svg, ">48'-0&quot;</text>")
  lu.assertStrContains(svg, ">17'-6&quot;</text>")
  lu.assertStrContains(svg, ">south, 5/12</text>")
  lu.assertStrContains(svg, ">10 ft</text>")
  lu.assertStrContains(svg, ">N</text>")
  for _, word in ipairs { "eave", "ridge", "rake", "module", "rail", "attachment", "rafter or truss", "setback asked for",
    "access pathway asked for" } do
    lu.assertStrContains(svg, ">" .. word .. "</text>")
  end
  lu.assertStrContains(svg, "No finding about what is drawn here needs action")
  lu.assertNotStrContains(svg, "does not stand")
end

-- Number one of the report fails at the ridge: the drawing keys it so, and outlines the nine modules of the high row.
function TestDraw:test_what_fails_is_outlined_and_keyed()
  local svg = drawn(plumb.sample("failing"), "roof")
  lu.assertStrContains(svg, "Fails: Clear width at the ridge, roof plane south")
  lu.assertStrContains(svg, "Clear width below the ridge is 17.5 in; at least 36 in is needed")
  lu.assertStrContains(svg, "(irc 2021, R324.6.2)")
  lu.assertStrContains(svg, "does not stand: see its number")
  lu.assertEquals(plumb.count(svg, ">1</text>"), 2) -- on the roof and in the list
  lu.assertEquals(plumb.count(svg, 'stroke="#8c1d18" stroke-width="2.6"'), 11) -- nine modules, the strip, the legend
  local report = plumb.run({ "check", plumb.top .. "/samples/quill-hollow/failing.yaml", "--book", "marrow-bay" })
  local ridge, busbar = report:find("Clear width at the ridge", 1, true), report:find("Busbar against", 1, true)
  lu.assertTrue(ridge < busbar) -- the same order as in the report
end

function TestDraw:test_planes_without_a_place_are_laid_beside_and_said_so()
  local text = plumb.sample("standing"):gsub("      plan_origin: [^\n]*\n", "")
  local svg = drawn(text, "roof")
  lu.assertStrContains(svg, "Plane south is laid beside the others: its plan_origin is not given.")
  lu.assertStrContains(svg, "Plane north is laid beside the others: its plan_origin is not given.")
  svg = drawn((text:gsub("      outline: [^\n]*\n", "")), "roof")
  lu.assertStrContains(svg, "there is nothing to draw yet")
end

function TestDraw:test_the_one_line_of_each_topology()
  local svg = drawn(plumb.sample("standing"), "one-line")
  for _, part in ipairs { ">string-1</text>", ">inverter-1</text>", ">main</text>", ">revenue</text>", ">utility</text>",
    ">8 AWG copper THWN-2</text>", "EMT 3/4 in, 20 ft, 240 V", ">OCPD circuit breaker 40 A</text>", ">bus 225 A</text>",
    "Connection: load side" } do
    lu.assertStrContains(svg, part)
  end
  svg = drawn(sample("three-roofs", "tern-lane"), "one-line")
  for _, part in ipairs { ">tap on the service</text>", "Connection: supply side", ">OCPD fused disconnect 35 A</text>",
    ">10 in series, input 1</text>", ">9 in series, input 2</text>", ">no converters</text>", ">2/0 AWG copper THWN-2</text>" } do
    lu.assertStrContains(svg, part)
  end
  svg = drawn(sample("three-roofs", "moss-end"), "one-line")
  for _, part in ipairs { ">10 microinverters</text>", ">9 microinverters</text>", ">pv-panel</text>",
    ">12 AWG copper trunk cable</text>" } do
    lu.assertStrContains(svg, part)
  end
end

function TestDraw:test_what_nobody_told_stands_as_not_given()
  local text = plumb.change(plumb.sample("standing"), "    conductor_size: 8 AWG\n", "")
  local svg = drawn(text, "one-line")
  lu.assertStrContains(svg, ">not given copper THWN-2</text>")
  text = plumb.change(plumb.sample("standing"), "position: 37, ", "")
  svg = drawn(text, "panel")
  lu.assertStrContains(svg, "pv, 40 A: position not given")
end

function TestDraw:test_the_panel_has_its_breakers_and_its_sums()
  local svg = drawn(plumb.sample("failing"), "panel")
  lu.assertStrContains(svg, ">range</text>")
  lu.assertStrContains(svg, "50 A, 2 poles; serves loads")
  lu.assertStrContains(svg, "165 A against a limit of 150 A; this way is not met")
  lu.assertStrContains(svg, ">1–19</text>") -- odd spaces on the left
  lu.assertStrContains(svg, ">20–24</text>")
  lu.assertStrContains(svg, "Fails: Busbar against the sum of its sources")
end

-- 3/8 in of capital letters is 36 of 96 units to the inch, and a capital is 0.716 of a letter's size.
-- The dimension of a rake is longer than what stands in plan; that of a roof nearly flat is not.
function TestDraw:test_a_length_along_the_roof_is_said_to_be_one()
  local note = "The length of a sloped side is given along the roof"
  lu.assertStrContains(drawn(plumb.sample("standing"), "roof"), note)
  lu.assertNotStrContains(drawn(sample("coast-and-summit", "tallow-court"), "roof"), note)
end

function TestDraw:test_a_neutral_is_told_where_there_can_be_one()
  local text = sample("three-roofs", "moss-end")
  local svg = drawn(text, "one-line")
  lu.assertEquals({ plumb.count(svg, "; no N<"), plumb.count(svg, "; N 8 AWG<") }, { 4, 1 })
  lu.assertNotStrContains(svg, "N not given")
  svg = drawn(plumb.change(text, "    neutral: none\n", "", 4), "one-line")
  lu.assertEquals({ plumb.count(svg, "; no N<"), plumb.count(svg, "; N not given<") }, { 0, 4 })
  svg = drawn(sample("three-roofs", "tern-lane"), "one-line") -- a DC run has none
  lu.assertNotStrContains(svg, "N not given")
  lu.assertEquals(plumb.count(svg, "EGC 10 AWG<"), 2)
end

-- A sum within its limit, of a way that something else keeps from being met, does not look like a mistake.
function TestDraw:test_sums_are_told_whole()
  local svg = drawn(sample("three-roofs", "moss-end"), "panel")
  lu.assertNotStrContains(svg, "…")
  lu.assertStrContains(svg, "100 A against a limit of 125 A; this way is not met for another reason: sum of breakers")
  lu.assertStrContains(svg, "210 A against a limit of 125 A; this way is not met: sum of breakers")
end

function TestDraw:test_labels_are_at_their_true_size()
  local svg = drawn(plumb.sample("standing"), "labels")
  lu.assertStrContains(svg, 'width="8.5in"')
  lu.assertStrContains(svg, 'viewBox="0 0 816 ')
  lu.assertStrContains(svg, 'font-size="50.28"')
  lu.assertStrContains(svg, "shutdown-placard: rapid shutdown, at service equipment")
  local text = plumb.sample("standing"):gsub("  %- {name: raceway%-label[^\n]*\n", "")
  svg = drawn(text, "labels")
  lu.assertStrContains(svg, "missing: Label: DC raceways")
end

function TestDraw:test_loads_by_zone()
  local svg = drawn(sample("coast-and-summit", "fennel-row"), "loads", { "--book", "larch-pass" })
  for _, zone in ipairs { "1", "2e", "2n", "3e" } do lu.assertStrContains(svg, ">" .. zone .. "</text>") end
  lu.assertStrContains(svg, "Uplift on high-foot-1-12 in zone 1")
  lu.assertStrContains(svg, " psf</text>")
  svg = drawn(plumb.sample("standing"), "loads", {})
  lu.assertStrContains(svg, "Without a rulebook no wind is known: areas alone are drawn.")
end

function TestDraw:test_without_a_book_a_design_is_drawn_as_it_is()
  for _, what in ipairs(all) do
    local svg = drawn(plumb.sample("failing"), what, {})
    lu.assertStrContains(svg, "This design was not held against a rulebook.")
    lu.assertStrContains(svg, "held against no rulebook")
    lu.assertNotStrContains(svg, "Fails:")
  end
end

function TestDraw:test_text_of_the_design_is_never_markup()
  local evil = [==["<script>alert(1)</script> & \"q\" 'x' ]]> שלום 🏠"]==]
  local text = plumb.change(plumb.sample("standing"), "title: Quill Hollow\n", "title: " .. evil .. "\n")
  text = plumb.change(text, "address: 3 Quill Hollow, Marrow Bay", "address: " .. evil)
  text = plumb.change(text, "text: PV POWER SOURCE", "text: " .. evil)
  text = plumb.change(text, "name: stack", [[name: "<b onclick=x> & 🏠"]])
  for _, what in ipairs(all) do
    local svg = drawn(text, what)
    lu.assertNotStrContains(svg, "<script")
    lu.assertNotStrContains(svg, "<b ")
    lu.assertStrContains(svg, "&lt;script&gt;alert(1)&lt;/script&gt; &amp; ")
  end
end

function TestDraw:test_where_it_cannot_be_written()
  local _, code, errors = draw(plumb.sample("standing"), "roof", { "-o", plumb.folder() })
  lu.assertEquals(code, 74)
  lu.assertStrContains(errors, plumb.folder())
  _, code = draw(plumb.sample("standing"), "roof", { "-o", plumb.folder() .. "/none/roof.svg" })
  lu.assertEquals(code, 74)
end

function TestDraw:test_a_design_that_is_not_read_leaves_an_older_drawing_alone()
  local path = plumb.folder() .. "/roof.svg"
  plumb.write(path, "older")
  local _, code, errors = draw("title: [\n", "roof", { "-o", path })
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "design.yaml:")
  lu.assertEquals(plumb.read(path), "older")
  lu.assertEquals(select(2, draw(plumb.sample("standing"), "roof", { "-o", path })), 0)
  lu.assertStrContains(plumb.read(path), "</svg>")
end

function TestDraw:test_a_wrong_command_line()
  lu.assertStrContains(select(3, plumb.run({ "draw", plumb.top .. "/samples/quill-hollow/standing.yaml" })),
    "it is not said what to draw; --what takes roof, one-line, panel")
  local design = plumb.top .. "/samples/quill-hollow/standing.yaml"
  local wrong = { { "draw" }, { "draw", design }, { "draw", design, "--what", "cellar" },
    { "draw", design, design, "--what", "roof" }, { "draw", design, "--what", "roof", "--on", "2026-02-30" } }
  for _, arguments in ipairs(wrong) do
    local output, code, errors = plumb.run(arguments)
    lu.assertEquals(code, 64)
    lu.assertEquals(output, "")
    lu.assertNotEquals(errors, "")
  end
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

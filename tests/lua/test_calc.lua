-- plumbrule calc: one calculator by hand, and what it says to what it cannot take.
local lu = require("luaunit")
local plumb = require("plumb")

TestCalc = {}

local function calc(...)
  local output, code, errors = plumb.run({ "calc", ... })
  return output, code, errors
end

local function refused(part, ...)
  local output, code, errors = calc(...)
  lu.assertEquals({ output, code }, { "", 64 })
  lu.assertStrContains(errors, part)
end

function TestCalc:test_the_list_says_what_each_takes()
  local output, code = calc()
  local flat = output:gsub("%s+", " ")
  lu.assertEquals(code, 0)
  lu.assertStrContains(flat, "modules Modules in series. (number, from 1 to 200)")
  lu.assertStrContains(flat, "open_circuit_voltage Open-circuit voltage of one module at 25 °C. (voltage in V, from 1 to 400)")
  lu.assertStrContains(flat, "material Its material. (one of copper, aluminum)")
  lu.assertStrContains(flat, "heated Is the building heated in winter? (yes or no)")
  lu.assertStrContains(flat, "coated Tinned copper? (yes or no; may be left out)")
  lu.assertStrContains(flat, "voltage gives: Voltage of the string.")
  for line in output:gmatch("[^\n]+") do lu.assertTrue(utf8.len(line) <= 80, line) end
end

-- 10 modules of 40 V at -5 °C, 30 K below 25 °C, with -0.25 %/°C: 10 * 40 V * (1 + 30 * 0.0025) = 430 V.
function TestCalc:test_a_result_with_its_working()
  local output, code = calc("cold_voltage", "modules=10", "open_circuit_voltage=40 V", "temperature=-5 °C", "coefficient=-0.25 %/°C")
  lu.assertEquals(code, 0)
  lu.assertStrContains(output, "voltage = 430 V\n")
  lu.assertStrContains(output, "\nWorking\n")
  lu.assertStrContains(output, "NEC 690.7(A)")
end

function TestCalc:test_yes_no_and_words()
  local output, code = calc("snow_thermal_factor", "edition=7-16", "heated=yes", "ventilated=no")
  lu.assertEquals({ output:match("^[^\n]*"), code }, { "factor = 1", 0 })
  output, code = calc("snow_thermal_factor", "edition=7-16", "heated=no", "ventilated=no")
  lu.assertEquals({ output:match("^[^\n]*"), code }, { "factor = 1.2", 0 })
  refused("ventilated: it is neither yes nor no; it takes yes or no", "snow_thermal_factor", "edition=7-16", "heated=yes", "ventilated=maybe")
  refused("it takes one of 7-10, 7-16, 7-22", "snow_thermal_factor", "edition=7-99", "heated=yes", "ventilated=no")
end

function TestCalc:test_inputs_that_cannot_be()
  refused("ventilated: it is not given", "snow_thermal_factor", "edition=7-16", "heated=yes")
  refused("heated: it is given twice", "snow_thermal_factor", "heated=yes", "heated=no")
  refused("has no input 'edtion'; did you mean edition", "snow_thermal_factor", "edtion=7-16")
  refused("has no input 'moon'; it has edition, heated, ventilated", "snow_thermal_factor", "moon=full")
  refused("'edition' is no INPUT=VALUE", "snow_thermal_factor", "edition")
  refused("it takes current in A", "ocpd_up", "current=20 V")
  refused("modules: ", "cold_voltage", "modules=many")
  refused("modules: ", "cold_voltage", "modules=0", "open_circuit_voltage=40 V", "temperature=-5 °C", "coefficient=-0.25 %/°C")
  refused("give coefficient", "cold_voltage", "modules=10", "open_circuit_voltage=40 V", "temperature=-5 °C")
end

-- What an input takes is told, and told once, whoever refuses it.
function TestCalc:test_all_mistakes_at_once()
  local _, code, errors = plumb.run { "calc", "ampacity", "size=2000 kcmil", "material=copper", "insulation=90 °C",
    "ambient=120 °C", "conductors=0" }
  lu.assertEquals(code, 64)
  for _, name in ipairs { "size", "ambient", "conductors" } do
    lu.assertEquals(plumb.count("\n" .. errors, "\n" .. name .. ": "), 1, errors)
  end
  _, code, errors = plumb.run { "calc", "hot_voltage", "modules=0" }
  lu.assertEquals(code, 64)
  for _, said in ipairs { "modules: modules is 0; it must be from 1 to 200", "temperature: it is not given; it takes" } do
    lu.assertEquals(plumb.count(errors, said), 1, errors)
  end
end

-- What cannot be read is told with what can be read but is no such word, and with what is not given.
function TestCalc:test_numbers_and_words_at_once()
  local _, code, errors = calc("ampacity", "size=10 AGW", "material=coper", "insulation=90", "ambient=-9 V", "conductors=six")
  lu.assertEquals(code, 64)
  for _, name in ipairs { "size", "material", "insulation", "ambient", "conductors" } do
    lu.assertEquals(plumb.count("\n" .. errors, "\n" .. name .. ": "), 1, errors)
  end
  _, _, errors = calc("ampacity", "insulation=90", "insulation=60", "material=coper", "ambient=30 °C", "conductors=3")
  for _, said in ipairs { 'insulation: "90" has no unit', "insulation: it is given twice", "material: 'coper'", "size: it is not given" } do
    lu.assertEquals(plumb.count(errors, said), 1, errors)
  end
  -- a misspelt name was meant for an input, which is then not said to be missing
  _, _, errors = calc("ampacity", "siz=10 AWG", "material=coper", "insulation=90 °C", "ambient=30 °C", "conductors=3")
  lu.assertEquals({ plumb.count(errors, "did you mean size"), plumb.count(errors, "material: "), plumb.count(errors, "not given") }, { 1, 1, 0 })
end

function TestCalc:test_what_it_takes_is_told_once()
  local function tells(words, ...)
    local _, code, errors = calc(...)
    lu.assertEquals(code, 64)
    local count = 0
    for _ in (errors .. " "):gmatch("it takes") do count = count + 1 end
    for _ in errors:gmatch("it must be") do count = count + 1 end
    for _ in errors:gmatch("editions known") do count = count + 1 end
    lu.assertEquals(count, 1, errors)
    lu.assertStrContains(errors, words)
  end
  tells("the editions known are 2017, 2020 and 2023", "ocpd_up", "current=8 A", "edition=2019")
  tells("edition: '7-99' is no edition; it takes one of 7-10, 7-16, 7-22", "snow_thermal_factor", "edition=7-99", "heated=yes", "ventilated=no")
  tells("current is 0 A; it must be from 0.01 to 6000 A", "ocpd_up", "current=0 A")
  tells("give coefficient", "cold_voltage", "modules=10", "open_circuit_voltage=40 V", "temperature=-5 °C")
  tells("it takes current in A, from 0.01 to 6000", "ocpd_up", "current=20 V")
end

function TestCalc:test_calculators_that_are_not_there()
  refused("did you mean 'ocpd_up'?", "ocpd_upp", "current=20 A")
  refused("there is no calculator 'moon'; plumbrule calc lists them all", "moon")
  -- one that works on things of a design is none to be run by hand
  refused("there is no calculator", "clearance")
end

-- Past the end of a table it is a person who must judge: no number is made up.
function TestCalc:test_beyond_a_table()
  local output, code, errors = calc("ocpd_up", "current=20.5 A", "edition=2023")
  lu.assertEquals(code, 0, errors)
  lu.assertStrContains(output, "25 A")
  output, code, errors = calc("ocpd_down", "current=2 A", "edition=2023")
  lu.assertEquals({ output, code }, { "", 2 })
  lu.assertStrContains(errors, "ocpd_down cannot tell; a person must judge: ")
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)

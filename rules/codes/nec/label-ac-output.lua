-- Deleted in 2023.
-- The least and the largest number in whichever way of writing the unit: "32 A", "240 VAC", "480V".
local function volts_on(text) return string.numbers_before(string.upper(text), "V", "VDC", "VAC", "VOLT", "VOLTS") end
local function amperes_on(text) return string.numbers_before(string.upper(text), "A", "AMP", "AMPS", "AMPERES", "ADC", "AAC") end

local function output_of(design) -- of all that makes AC of PV: currents together, the largest voltage
  local amperes, volts = 0 * A, 0 * V
  for _, inverter in ipairs(design.inverters) do
    if not inverter.status:is("removed") then
      amperes = amperes + inverter:output_current()
      volts = largest(volts, inverter.model.nominal_voltage)
    end
  end
  for _, branch in ipairs(design.branches) do
    amperes = amperes + branch:output_current()
    volts = largest(volts, branch.microinverter.nominal_voltage)
  end
  return amperes, volts
end

---@type plumbrule.Rule
-- Each label beside the whole output where it stands alone. Where there are several, each may stand at a point of
-- its own: one that gives the whole output will do, else a person looks at what they give together.
return {
  title = "Label: rated AC output",
  cite = { ["2017"] = "690.54", ["2020"] = "690.54", ["2023"] = "(none)" },
  about = "design",
  applies = function(design, book) return design.modules:count() > 0 and not same(book:edition("nec"), "2023") end,
  check = function(design, book)
    local labels, together, alone = 0, 0, 0
    local amperes, volts = output_of(design)
    for _, label in ipairs(design.labels) do
      if label.kind:is("AC disconnect") then
        labels = labels + 1
        local least, most = amperes_on(label.text)
        shall.be("It gives amperes", most and true or false)
        shall.be("It gives volts", volts_on(label.text) and true or false)
        if most then
          together, alone = together + most, largest(alone, most)
          if least * A < amperes and most * A >= amperes then
            review(format("It gives more than one current, the least of them %s: the inspector looks which of them is the output", least * A))
          end
        end
        _, most = volts_on(label.text)
        if most then
          shall.be_at_least("Voltage that it gives, against that of the output", most * V, volts)
          if most * V > volts then review(format("It gives %s, and the output has %s: the inspector looks which of its voltages is the output's", most * V, volts)) end
        end
        shall.be("At the point of interconnection", label.place:is("AC disconnect", "PV disconnect", "main panel", "panel", "service equipment"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
    if together * A < amperes then
      shall.be_at_least("Current on the labels, against the output", together * A, amperes)
    elseif alone * A < amperes then
      review(format("No label gives the whole output, the largest says %s: the inspector looks which inverter or branch each stands for", alone * A))
    else
      shall.be_at_least("Current on the labels, against the output", alone * A, amperes)
      if alone * A > book.continuous_factor * amperes then
        review(format("It gives %s, and the output is %s: the designer looks whether the number is meant", alone * A, amperes))
      end
    end
  end,
  remedy = "Mark rated AC current and nominal AC voltage at the point of interconnection.",
}

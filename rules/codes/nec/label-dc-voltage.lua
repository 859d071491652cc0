-- What 2017 lists beside the voltage, and the section number of 2023: from memory.
-- The least and the largest number in whichever way of writing the unit: "32 A", "240 VAC", "480V".
local function volts_on(text) return string.numbers_before(string.upper(text), "V", "VDC", "VAC", "VOLT", "VOLTS") end
local function amperes_on(text) return string.numbers_before(string.upper(text), "A", "AMP", "AMPS", "AMPERES", "ADC", "AAC") end

---@type plumbrule.Rule
return {
  title = "Label: largest DC voltage",
  cite = { ["2017"] = "690.53", ["2020"] = "690.53", ["2023"] = "690.7(D)" },
  about = "design",
  applies = function(design) return design.strings:count() > 0 end,
  check = function(design, book)
    local labels = 0
    local most, bears = 0 * V, 0 * V -- what the strings give, and what their inverters bear
    for _, each in ipairs(design.strings) do
      if each.inverter then bears = largest(bears, each.inverter.model.maximum_dc_voltage) end
      most = largest(most, each:maximum_voltage(design.site.design_low_temperature))
    end
    for _, label in ipairs(design.labels) do
      if label.kind:is("DC maximum voltage") then
        labels = labels + 1
        local _, volts = volts_on(label.text)
        shall.be("It gives volts", volts and true or false)
        if volts then shall.be_at_least("Voltage that it gives, against the largest of any string", volts * V, most) end
        if volts and bears > 0 * V and volts * V > bears then
          review(format("It gives %s, more than the inverters bear (%s): the designer looks whether the number is meant", volts * V, bears))
        end
        shall.be("At the DC disconnect, the inverter or what stands between", label.place:is("PV disconnect", "inverter", "combiner"))
        if same(book:edition("nec"), "2017") then
          shall.be("It gives amperes, too (2017)", amperes_on(label.text) and true or false)
        end
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the largest DC voltage at the DC disconnect or the inverter.",
}

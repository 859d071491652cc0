---@type plumbrule.Rule
return {
  title = "Length of a converter string",
  cite = { ["2017"] = "690.7(B), 110.3(B)", ["2020"] = "690.7(B), 110.3(B)", ["2023"] = "690.7(B), 110.3(B)" },
  about = "string",
  applies = function(string) return string.has_converters end,
  check = function(string, book)
    local converter = string.converter
    local converters = string:converter_count()
    shall.be_at_least("Converters in the string", converters, converter.minimum_per_string)
    shall.not_exceed("Converters in the string", converters, converter.maximum_per_string)
    shall.not_exceed("Power of the string", string:power(), converter.maximum_string_power)
    shall.not_exceed("Largest voltage of the string", converter.maximum_string_voltage, book.dwelling_dc_voltage)
    if not string.inverter then
      shall.be("It feeds an inverter of the design", false)
      return
    end
    shall.not_exceed("Largest voltage of the string, at the inverter", converter.maximum_string_voltage, string.inverter.model.maximum_dc_voltage)
    local held, inverter = string:held_voltage(), string.inverter.model
    if inverter.type:is("converter-fed") then
      if not same(held, inverter.nominal_dc_voltage) then
        shall.be_equal("Voltage at which the converters are held, against the inverter's", held, inverter.nominal_dc_voltage)
      end
    else
      shall.be_at_least("Voltage at which the converters are held, against the lower end of the inverter's window", held, inverter.tracking_low)
      shall.not_exceed("Voltage at which the converters are held, against the upper end of the inverter's window", held, inverter.tracking_high)
    end
  end,
  remedy = "Share the modules among strings so that each stays within the converter's instructions.",
}

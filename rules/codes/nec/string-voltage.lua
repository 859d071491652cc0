---@type plumbrule.Rule
return {
  title = "Voltage of a string in the cold",
  cite = { ["2017"] = "690.7(A)", ["2020"] = "690.7(A)", ["2023"] = "690.7(A)" },
  about = "string",
  applies = function(string) return not string.has_converters end,
  check = function(string, book, design)
    local cold = string:cold_voltage(design.site.design_low_temperature)
    shall.not_exceed("Open-circuit voltage in the cold, on or in a dwelling", cold, book.dwelling_dc_voltage)
    if string.inverter then
      shall.not_exceed("Open-circuit voltage in the cold, at the inverter", cold, string.inverter.model.maximum_dc_voltage)
    end
    local seen -- each model once
    for _, module in ipairs(string.modules) do
      if not seen or not same(seen, module.model) then
        seen = module.model
        shall.not_exceed("Open-circuit voltage in the cold, at the modules", cold, seen.maximum_system_voltage)
      end
    end
  end,
  remedy = "Shorten the string.",
}

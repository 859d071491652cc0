---@type plumbrule.Rule
return {
  title = "Module against its DC-to-DC converter",
  cite = "110.3(B)",
  about = "string",
  applies = function(string) return string.has_converters end,
  check = function(string, _, design)
    local converter, per = string.converter, string.modules_per_converter
    for _, module in ipairs(string.modules) do
      local model = module.model
      shall.not_exceed("Rated power of the module", per * model.rated_power, converter.rated_input_power)
      shall.not_exceed("Open-circuit voltage of the module in the cold", per * module:cold_voltage(design.site.design_low_temperature), converter.maximum_input_voltage)
      shall.not_exceed("Short-circuit current of the module", model.short_circuit_current, converter.maximum_input_current)
    end
  end,
  remedy = "Pair the module with a converter that is rated for it.",
}

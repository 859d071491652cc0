---@type plumbrule.Rule
return {
  title = "Modules against their DC-to-DC converter",
  cite = "110.3(B)",
  about = "string",
  applies = function(string) return string.has_converters end,
  check = function(string, _, design)
    local converter = string.converter
    shall.not_exceed("Rated power of the modules on one converter", string:converter_power(), converter.rated_input_power)
    shall.not_exceed("Their open-circuit voltage in the cold", string:converter_voltage(design.site.design_low_temperature), converter.maximum_input_voltage)
    shall.not_exceed("Short-circuit current of a module", string:short_circuit_current(), converter.maximum_input_current)
  end,
  remedy = "Pair the modules with a converter that is rated for them.",
}

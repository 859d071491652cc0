---@type plumbrule.Rule
return {
  title = "Currents and power into an inverter",
  cite = "110.3(B)",
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter)
    local model = inverter.model
    for input = 1, model.tracking_inputs do
      shall.not_exceed(format("Operating current into input %d", input), inverter:input_current(input), model.maximum_input_current)
      shall.not_exceed(format("Short-circuit current into input %d", input), inverter:short_circuit_current(input), model.maximum_short_circuit_current)
    end
    shall.not_exceed("Power of the array", inverter:array_power(), model.maximum_dc_power)
  end,
  remedy = "Spread the strings over the inputs, or choose an inverter that takes their current.",
}

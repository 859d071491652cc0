---@type plumbrule.Rule
return {
  title = "Strings on each input",
  cite = "110.3(B)",
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter)
    local model = inverter.model
    for input = 1, model.tracking_inputs do
      shall.not_exceed(format("Strings on input %d", input), inverter:string_count(input), model.strings_per_input)
    end
    shall.be_more_than("Strings that feed it", inverter.strings:count(), 0)
  end,
  remedy = "Spread the strings over the inputs as the inverter's instructions allow.",
}

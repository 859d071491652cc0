---@type plumbrule.Rule
return {
  title = "What a string is made of",
  cite = "110.3(B)",
  about = "string",
  check = function(string)
    shall.be("It feeds an inverter of the design", not not string.inverter)
    if not string.inverter then return end
    local inverter = string.inverter.model
    shall.be_more_than("Modules in the string", string:module_count(), 0)
    shall.not_exceed("Number of its input against the inverter's inputs", string.input, inverter.tracking_inputs)
    if inverter.type:is("converter-fed") then
      shall.be("The converters that its inverter needs are there", string.has_converters)
    elseif inverter.type:is("microinverter") then
      shall.be("A microinverter stands in a branch, not behind a string", false)
    end
    local staying, is_removed = 0, string.inverter.status:is("removed")
    for _, module in ipairs(string.modules) do
      if not module.status:is("removed") then staying = staying + 1 end
    end
    if staying > 0 or not is_removed then
      shall.be_equal("Modules of the string that stay on the roof", staying, string.modules:count())
      shall.be("Its inverter stays", not is_removed)
    end
    if not string.has_converters then
      -- Unlike modules in series hold each other back; not forbidden.
      local alike = true
      for _, module in ipairs(string.modules) do
        if not same(module.model, string.modules[1].model) then alike = false end
      end
      should.be("All its modules are of one model", alike)
      -- On one input the shorter string pulls the longer one away from its best point; common practice, no source.
      for _, other in ipairs(string.inverter.strings) do
        if not same(other, string) and same(other.input, string.input) and not other.has_converters then
          should.be_equal(format("Modules in series, against those of string %s on the same input", other:called()), string:module_count(), other:module_count())
        end
      end
    end
  end,
  remedy = "Name the modules, the converters and the input as the instructions of inverter and converter ask.",
}

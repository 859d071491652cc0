---@type plumbrule.Rule
-- Terminals for more than 75 °C are rare, and their equipment must be marked for it: from memory.
return {
  title = "Temperature that the terminals take",
  cite = "110.14(C)(1)",
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and not circuit.role:is("service")
  end,
  check = function(circuit, book)
    local is_single = circuit.role:is("inverter output", "microinverter branch") or circuit.role:is("combined branches") and circuit.carries:count() < 2
    if circuit.terminal_temperature > book.usual_terminal_temperature then
      review(format("It counts on terminals of %s, more than the usual: the inspector looks that both ends are marked for it", circuit.terminal_temperature))
    end
    for _, carried in ipairs(circuit.carries) do
      if not is_single then
        break
      elseif same(carried:kind_of(), "inverter") then
        shall.not_exceed("Temperature that the circuit counts on, against the inverter's terminals", circuit.terminal_temperature, carried.model.terminal_temperature)
      elseif same(carried:kind_of(), "branch") then
        shall.not_exceed("Temperature that the circuit counts on, against the microinverter's terminals", circuit.terminal_temperature, carried.microinverter.terminal_temperature)
      else
        review(format("Nothing is told of the terminals of %s: the inspector looks at their marking", carried:called()))
      end
    end
    shall.not_exceed("The same, against the insulation", circuit.terminal_temperature, circuit.insulation_temperature)
  end,
  remedy = "Size the conductors in the column of the lowest-rated terminal.",
}

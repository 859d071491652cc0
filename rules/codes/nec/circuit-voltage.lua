---@type plumbrule.Rule
-- From memory. What a breaker's poles and the voltage lost are judged by must be the voltage that is there.
return {
  title = "Voltage of an AC circuit",
  cite = "110.4, 110.3(B)",
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed")
      and circuit.role:is("inverter output", "microinverter branch", "combined branches", "supply-side")
  end,
  check = function(circuit, _, design)
    local connecting = design.interconnection.conductors
    if connecting and same(connecting, circuit) then
      shall.be_equal("Voltage told of the circuit, against that told of the interconnection", circuit.nominal_voltage, design.interconnection.nominal_voltage)
    end
    local judged = false
    for _, carried in ipairs(circuit.carries) do
      if same(carried:kind_of(), "inverter") then
        judged = true
        shall.be_equal(format("Voltage told of the circuit, against that of %s", carried:called()), circuit.nominal_voltage, carried.model.nominal_voltage)
      elseif same(carried:kind_of(), "branch") then
        judged = true
        shall.be_equal(format("Voltage told of the circuit, against that of %s", carried:called()), circuit.nominal_voltage, carried.microinverter.nominal_voltage)
      end
    end
    if judged then return end
    if same(circuit.nominal_voltage, design.service.voltage_to_ground) then
      shall.be_equal("Voltage told of the circuit, against the service's to ground", circuit.nominal_voltage, design.service.voltage_to_ground)
    else
      shall.be_equal("Voltage told of the circuit, against the service's", circuit.nominal_voltage, design.service.voltage)
    end
  end,
  remedy = "Tell the nominal voltage of what the circuit carries.",
}

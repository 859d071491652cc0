---@type plumbrule.Rule
-- No limit of the code for PV; 2 % on the DC side and 1 % on the AC side is practice.
return {
  title = "Voltage lost along a circuit",
  cite = "common practice, no limit in the code",
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and not circuit.role:is("feeder", "feeder tap", "service")
      and not circuit.wiring_method:is("trunk cable")
  end,
  check = function(circuit, book, design)
    -- A higher voltage than there is would hide what is lost.
    for _, carried in ipairs(circuit.carries) do
      local volts
      if same(carried:kind_of(), "inverter") then
        volts = carried.model.nominal_voltage
      elseif same(carried:kind_of(), "branch") then
        volts = carried.microinverter.nominal_voltage
      elseif same(carried:kind_of(), "string") then
        volts = carried:maximum_voltage(design.site.design_low_temperature)
      end
      if volts and circuit.nominal_voltage > volts then
        should.not_exceed("Voltage told of the circuit, against the largest of what it carries", circuit.nominal_voltage, volts)
      end
    end
    local lost = circuit:voltage_drop()
    if circuit.role:is("PV source", "PV output", "converter output") then
      should.not_exceed("Share of the voltage that is lost", lost, book.dc_drop)
    else
      should.not_exceed("Share of the voltage that is lost", lost, book.ac_drop)
    end
  end,
  remedy = "Use a larger conductor or a shorter way.",
}

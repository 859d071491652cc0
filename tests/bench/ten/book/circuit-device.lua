return {
  title = "Overcurrent device against 125 % of the output current",
  cite = "check 1",
  about = "circuit",
  applies = function(circuit) return circuit.role:is("inverter output") end,
  check = function(circuit)
    local sum = 0 * A
    for _, inverter in ipairs(circuit.carries) do sum = sum + inverter.model.output_current end
    shall.be_at_least("Rating of the device", circuit.ocpd_rating, 1.25 * sum)
  end,
}

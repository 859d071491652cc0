---@type plumbrule.Rule
-- Section from memory.
return {
  title = "DC and AC circuits apart",
  cite = "690.31(B)",
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and circuit.role:is("PV source", "PV output", "converter output", "inverter output")
  end,
  check = function(circuit)
    shall.be("Circuits of the other kind are in another raceway or behind a partition", circuit.dc_and_ac_separated)
  end,
  remedy = "Give PV circuits a raceway of their own, or a partition in boxes that they share.",
}

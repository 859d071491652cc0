---@type plumbrule.Rule
-- Grouping and marking of the conductors, polarity too. Letters from memory.
return {
  title = "DC conductors grouped and marked",
  cite = { ["2017"] = "690.31(B)(1), (2)", ["2020"] = "690.31(B)(1), (2)", ["2023"] = "690.31(B)(1), (2)" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and circuit.role:is("PV source", "PV output", "converter output")
  end,
  check = function(circuit)
    shall.be("Its conductors are grouped, and marked at every box, splice and terminal", circuit.identified)
  end,
  remedy = "Mark circuit and polarity wherever the conductors are reached, and tie those of one circuit together.",
}

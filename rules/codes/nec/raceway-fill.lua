---@type plumbrule.Rule
return {
  title = "Fill of a raceway",
  cite = "Chapter 9 Table 1",
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed")
      and circuit.wiring_method:is("EMT", "RMC", "IMC", "PVC 40", "PVC 80", "FMC", "LFMC", "LFNC", "underground raceway")
  end,
  check = function(circuit)
    shall.not_exceed("Share of the raceway that is filled", circuit:fill(), circuit:fill_limit())
  end,
  remedy = "Use a larger raceway, or share the conductors among two.",
}

---@type plumbrule.Rule
-- A raceway in a wet place is wet inside (300.9; sections from memory); one on a roof stands in the wet.
-- So does one on an outer wall. THHN alone is for dry and damp places; cable marked both ways is told by its wet marking (THWN-2).
-- XHHW may be wet at 75 °C: the rule on the temperature of the insulation sees to that. NM cable and FMC are for dry places.
return {
  title = "Insulation of conductors in the wet",
  cite = "300.9, 310.10(C), 334.12(B), 348.12",
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed")
      and circuit.role:is("PV source", "PV output", "converter output", "inverter output", "microinverter branch", "combined branches", "supply-side", "feeder", "feeder tap", "service")
      and (circuit.on_roof or circuit.wiring_method:is("underground raceway")
        or not circuit.inside_building or circuit.length_inside < circuit.length)
  end,
  check = function(circuit)
    shall.be("For wet places", not circuit.insulation:is("THHN", "NM-B", "bare"))
    shall.be("In a raceway or cable for wet places", not circuit.wiring_method:is("NM cable", "FMC"))
  end,
  remedy = "Pull conductors that are marked for wet places (THWN-2, XHHW-2, RHW-2, USE-2 or PV wire), in a raceway that is.",
}

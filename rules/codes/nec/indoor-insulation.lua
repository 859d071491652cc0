---@type plumbrule.Rule
-- From memory, as that conductors are insulated (310.106(C), 310.3(D)): USE-2 alone need not resist flame, and is not for inside. What is marked RHW-2 as well is told as RHW-2.
return {
  title = "Insulation of conductors indoors",
  cite = { ["2017"] = "338.12(B)(1), 310.106(C)", ["2020"] = "338.12(B)(1), 310.3(D)", ["2023"] = "338.12(B)(1), 310.3(D)" },
  about = "circuit",
  applies = function(circuit)
    if circuit.status:is("removed") then return false end
    return circuit.inside_building or circuit.insulation:is("USE-2") and circuit.length_inside > 0 * ft
  end,
  check = function(circuit)
    if circuit.role:is("service") and circuit.insulation:is("USE-2") then
      review("Service conductors of USE-2 come inside, and USE-2 alone may not: the inspector looks how far they run and whether they are marked RHW-2, too")
    else
      shall.be("Fit for inside (USE-2 alone is not)", not circuit.insulation:is("USE-2"))
      shall.be("Its ungrounded conductors are insulated", not circuit.insulation:is("bare"))
    end
  end,
  remedy = "Change to THWN-2 or the like where the circuit enters the building, or use conductors that are marked RHW-2 as well.",
}

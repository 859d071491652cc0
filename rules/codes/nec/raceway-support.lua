---@type plumbrule.Rule
-- 358.30(A), 344.30, 352.30 and those of flexible raceways: from memory. Lengths of flexible raceway at a machine may
-- go without; a person would have to say so.
return {
  title = "Support of a raceway",
  cite = "342.30, 344.30, 348.30, 350.30, 352.30, 356.30, 358.30",
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and circuit.wiring_method:is("EMT", "RMC", "IMC", "PVC 40", "PVC 80", "FMC", "LFMC", "LFNC")
  end,
  check = function(circuit, book)
    local limit = book.metal_raceway_support
    if circuit.wiring_method:is("PVC 40", "PVC 80", "LFNC") then limit = book.plastic_raceway_support end
    if circuit.wiring_method:is("FMC", "LFMC") then limit = book.flexible_raceway_support end
    shall.not_exceed("Distance between supports", circuit.support_spacing, limit)
  end,
  remedy = "Add straps.",
}

---@type plumbrule.Rule
-- 358.30(A), 344.30, 352.30 and those of flexible raceways: from memory. Lengths of flexible raceway at a machine may
-- go without; a person would have to say so. Cables, from memory: metal-clad 6 ft (330.30), in the house 4.5 ft (334.30,
-- 340.10(4)), of microinverters and AC cable in the open 6 ft, where the maker's instructions do not ask for less.
return {
  title = "Support of a raceway or cable",
  cite = "330.30, 334.30, 342.30, 344.30, 348.30, 350.30, 352.30, 356.30, 358.30, 690.31",
  about = "circuit",
  applies = function(circuit)
    if circuit.status:is("removed") or circuit.wiring_method:is("cable tray", "underground raceway") then return false end
    -- Array cable has a rule of its own.
    return not (circuit.wiring_method:is("free air") and circuit.role:is("PV source", "PV output", "converter output", "service"))
  end,
  check = function(circuit, book)
    local limit = book.metal_raceway_support
    if circuit.wiring_method:is("PVC 40", "PVC 80", "LFNC") then limit = book.plastic_raceway_support end
    if circuit.wiring_method:is("FMC", "LFMC") then limit = book.flexible_raceway_support end
    if circuit.wiring_method:is("NM cable", "UF cable") then limit = book.house_cable_support end
    if circuit.wiring_method:is("MC cable", "trunk cable", "free air") then limit = book.open_cable_support end
    shall.not_exceed("Distance between supports", circuit.support_spacing, limit)
  end,
  remedy = "Add straps, or clips and ties that stand sun and weather.",
}

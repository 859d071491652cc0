---@type plumbrule.Rule
-- 2017 by way of 338.10(B)(4)(b) and 334.30 (4.5 ft); 2023's two sizes: both from memory. In a tray: 2020 published, the
-- others from memory; that it is secured every 4.5 ft besides, the inspector sees.
return {
  title = "Support of exposed array cable",
  cite = { ["2017"] = "690.31(C)(1), (2), 334.30", ["2020"] = "690.31(C)(1), (2)", ["2023"] = "690.31(C)(1), (2)" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and circuit.role:is("PV source", "PV output", "converter output")
      and circuit.wiring_method:is("free air", "cable tray")
  end,
  check = function(circuit, book)
    local limit = book.cable_support
    if circuit.wiring_method:is("cable tray") then
      limit = book.tray_support
    elseif same(book:edition("nec"), "2023") and calc.conductor_area { size = circuit.conductor_size } > calc.conductor_area { size = "8 AWG" } then
      limit = book.large_cable_support
    end
    shall.not_exceed("Distance between supports", circuit.support_spacing, limit)
  end,
  remedy = "Add clips or ties that stand sun and weather.",
}

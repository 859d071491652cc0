---@type plumbrule.Rule
-- 2017: USE-2 or PV wire (from memory); 2020 adds RHW-2, and asks that USE-2 and RHW-2 resist sunlight. For 2017
-- 310.10(D) asks it of all conductors in the sun (from memory). PV wire resists it by its listing.
return {
  title = "Cable types in the array",
  cite = { ["2017"] = "690.31(C)(1), 310.10(D)", ["2020"] = "690.31(C)(1)", ["2023"] = "690.31(C)(1)" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and circuit.role:is("PV source", "PV output", "converter output")
      and circuit.wiring_method:is("free air", "cable tray")
  end,
  check = function(circuit, book)
    if same(book:edition("nec"), "2017") then
      shall.be("PV wire or USE-2", circuit.insulation:is("PV wire", "USE-2"))
    else
      shall.be("PV wire, USE-2 or RHW-2", circuit.insulation:is("PV wire", "USE-2", "RHW-2"))
    end
    if circuit.insulation:is("PV wire") then
      shall.be("Listed to UL 4703", circuit.listings:has("UL 4703"))
    elseif circuit.insulation:is("USE-2", "RHW-2") then
      shall.be("Marked sunlight resistant", circuit.sunlight_resistant)
    end
  end,
  remedy = "Use listed PV wire in the array.",
}

---@type plumbrule.Rule
-- 690.45: by Table 250.122 from the device of each circuit in the array, or from the one that 690.9(B) would ask for;
-- not below 14 AWG; smaller than 6 AWG only where protected (690.46, 250.120(C): from memory).
return {
  title = "Equipment grounding conductor of the array",
  cite = { ["2017"] = "690.45, 690.46, 250.120(C)", ["2020"] = "690.45, 690.46, 250.120(C)", ["2023"] = "690.45, 690.46, 250.120(C)" },
  about = "grounding",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(grounding, book, design)
    local edition = tonumber(book:edition("nec"))
    local section = calc.conductor_area { size = grounding.array_egc_size }
    shall.be_at_least("Section in kcmil (14 AWG is the least)", section, calc.conductor_area { size = "14 AWG" })
    for _, circuit in ipairs(design.circuits) do
      if not circuit.status:is("removed") and circuit.role:is("PV source", "converter output", "microinverter branch") then
        local rating
        if circuit.ocpd:is("none") then rating = circuit:needed_ocpd(edition) else rating = circuit.ocpd_rating end
        local needed = calc.egc_size { ocpd = rating, material = grounding.array_egc_material }
        shall.be_at_least(format("Section in kcmil, for circuit %s (%s is needed)", circuit:called(), needed), section, calc.conductor_area { size = needed })
        if circuit.wiring_method:is("free air") and calc.conductor_area { size = circuit.egc_size } < section then
          review(format("With circuit %s in the open runs a grounding conductor of %s, and the array's is told to be of %s: the designer tells which is there", circuit:called(), circuit.egc_size, grounding.array_egc_size))
        end
      end
    end
    if not grounding.array_egc_protected then
      shall.be_at_least("Section of an unprotected one in kcmil (6 AWG is the least)", section, calc.conductor_area { size = "6 AWG" })
    end
  end,
  remedy = "Use the size that belongs to the circuits' devices; protect it, or use 6 AWG.",
}

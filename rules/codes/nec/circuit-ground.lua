---@type plumbrule.Rule
return {
  title = "Equipment grounding conductor of a circuit",
  cite = { ["2017"] = "690.45, 250.122", ["2020"] = "690.45, 250.122", ["2023"] = "690.45, 250.122" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and not circuit.role:is("service", "supply-side")
      and not circuit.wiring_method:is("trunk cable")
  end,
  check = function(circuit, book)
    local needed = circuit:needed_egc(tonumber(book:edition("nec")))
    shall.be_at_least(format("Section of its grounding conductor in kcmil (%s is needed)", needed),
      calc.conductor_area { size = circuit.egc_size }, calc.conductor_area { size = needed })
  end,
  remedy = "Use the grounding conductor that belongs to the overcurrent device, or to the one that 690.9(B) would ask for.",
}

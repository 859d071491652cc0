---@type plumbrule.Rule
-- 250.122(B), from memory: with AC conductors larger than the smallest that serves, it grows in proportion, up to
-- their own size (250.122(A)). 690.45 spares PV circuits that grow for the voltage drop.
return {
  title = "Equipment grounding conductor of a circuit",
  cite = { ["2017"] = "690.45, 250.122", ["2020"] = "690.45, 250.122", ["2023"] = "690.45, 250.122" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and not circuit.role:is("service", "supply-side")
      and not circuit.wiring_method:is("trunk cable")
  end,
  check = function(circuit, book)
    local edition = tonumber(book:edition("nec"))
    local needed = circuit:needed_egc(edition)
    shall.be_at_least(format("Section of its grounding conductor in kcmil (%s is needed)", needed),
      calc.conductor_area { size = circuit.egc_size }, calc.conductor_area { size = needed })
    if circuit.role:is("inverter output", "microinverter branch", "combined branches") and not circuit.ocpd:is("none") then
      local own = calc.conductor_area { size = circuit.conductor_size }
      local smallest_that_serves = calc.conductor_area { size = circuit:smallest_size(edition) }
      if own > smallest_that_serves then
        shall.be_at_least("Section of its grounding conductor in kcmil, grown with the conductors",
          calc.conductor_area { size = circuit.egc_size }, smallest(own, calc.conductor_area { size = needed } * own / smallest_that_serves))
      end
    end
  end,
  remedy = "Use the grounding conductor that belongs to the overcurrent device, or to the one that 690.9(B) would ask for; where the others are larger than they need be, one larger in proportion.",
}

local function is_raceway(circuit)
  return circuit.wiring_method:is("EMT", "RMC", "IMC", "PVC 40", "PVC 80", "FMC", "LFMC", "LFNC", "underground raceway")
end

---@type plumbrule.Rule
-- Circuits told to be in one raceway must agree on what it is and on what is in it. That no conductor may be heated
-- above its own rating by its neighbours: 310.14(A)(3) (2017: 310.15(A)(3)), from memory. That current-carrying
-- conductors of all circuits in it count together: published by trade pages.
return {
  title = "Circuits that share a raceway",
  cite = { ["2017"] = "310.15(A)(3), (B)(3)(a), 300.17", ["2020"] = "310.14(A)(3), 310.15(C)(1), 300.17", ["2023"] = "310.14(A)(3), 310.15(C)(1), 300.17" },
  about = "circuit",
  applies = function(circuit) return not not circuit.raceway_of and not circuit.status:is("removed") end,
  check = function(circuit)
    local host = circuit.raceway_of
    local name = host:called()
    shall.be(format("The raceway is that of circuit %s, which is in no other circuit's", name), not host.raceway_of and not same(host, circuit))
    if host.raceway_of then return end
    if host.status:is("removed") then
      review(format("Circuit %s, whose raceway it is, is removed: the designer tells whether the raceway stays, and tells its counts anew", name))
      return
    end
    shall.be(format("Its wiring method is that of circuit %s", name), same(circuit.wiring_method, host.wiring_method))
    if is_raceway(circuit) and is_raceway(host) then
      shall.be(format("Its raceway has the size told of circuit %s", name), same(circuit.raceway_size, host.raceway_size))
    end
    shall.be_equal(format("All conductors in the raceway, against those told of circuit %s", name), circuit.conductors, host.conductors)
    shall.be_equal(format("Current-carrying conductors, against those told of circuit %s", name), circuit.current_carrying_conductors, host.current_carrying_conductors)
    if not same(circuit.insulation_temperature, host.insulation_temperature) then
      review(format("Its insulation is good for %s, that of circuit %s for %s: whoever designs it shows that neither is heated above its own rating by the other's current", circuit.insulation_temperature, name, host.insulation_temperature))
    end
  end,
  remedy = "Tell of every circuit in a raceway the same raceway and the same counts, which hold for all conductors in it.",
}

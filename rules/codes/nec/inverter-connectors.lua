-- Conductors in a raceway or metal-clad cable end on terminals unless a connector is told of them: nothing mates there.
local function ends_on_terminals(circuit)
  return circuit.wiring_method:is("EMT", "RMC", "IMC", "PVC 40", "PVC 80", "FMC", "LFMC", "LFNC", "underground raceway", "MC cable")
end

---@type plumbrule.Rule
-- Letters of 690.33 from memory, as that UL 6703 is the standard of the connectors. An inverter whose listings leave
-- it out has terminals.
return {
  title = "Connectors at the inverter mated as listed",
  cite = { ["2017"] = "690.33, 110.3(B)", ["2020"] = "690.33(C), 110.3(B)", ["2023"] = "690.33(C), 110.3(B)" },
  about = "circuit",
  applies = function(circuit)
    if circuit.status:is("removed") or not circuit.role:is("PV source", "PV output", "converter output") then return false end
    local to = circuit.to
    if not to or not same(to:kind_of(), "inverter") or not to.model.listings:has("UL 6703") then return false end
    return not same(circuit.connector, "none") or not ends_on_terminals(circuit)
  end,
  check = function(circuit)
    local inverter = circuit.to
    if same(circuit.connector, "none") then
      review(format("It runs to %s in the open, and no connector is told of its end there: the designer names it, as the inverter's papers list connectors", inverter:called()))
      return
    end
    shall.meet_one_of {
      { "connectors of one kind", function()
          shall.be_equal("Connector of the circuit, against the inverter's", circuit.connector, inverter.model.connector)
        end },
      { "a pair listed together", function()
          shall.be("The design says that the two are listed for each other", circuit.connectors_listed_together)
        end },
    }
  end,
  remedy = "Mate connectors of one make and type, or a pair that is listed together.",
}

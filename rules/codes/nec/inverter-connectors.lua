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
    return to and same(to:kind_of(), "inverter") and to.model.listings:has("UL 6703") or false
  end,
  check = function(circuit)
    local inverter = circuit.to
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

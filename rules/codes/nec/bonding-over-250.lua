---@type plumbrule.Rule
-- From 2020 690.43(D) asks it of solidly grounded circuits only: a relief (2023 from memory).
return {
  title = "Bonding of raceways above 250 V to ground",
  cite = { ["2017"] = "250.97", ["2020"] = "690.43(D), 250.97", ["2023"] = "690.43(D), 250.97" },
  about = "grounding",
  applies = function(grounding, book, design)
    if not same(book:edition("nec"), "2017") and not grounding.solidly_grounded then return false end
    for _, circuit in ipairs(design.circuits) do
      if not circuit.status:is("removed") and not circuit.wiring_method:is("free air", "cable tray")
        and circuit.role:is("PV source", "PV output", "converter output") and (circuit.nominal_voltage > book.bonding_voltage or circuit:largest_voltage() > book.bonding_voltage) then
        return true
      end
    end
    return false
  end,
  check = function(grounding)
    shall.be("Raceways of those circuits are bonded by fittings made for it", grounding.bonded_over_250_volts)
  end,
  remedy = "Use bonding bushings or fittings listed for it at every knockout that is not clean.",
}

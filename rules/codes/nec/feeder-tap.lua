---@type plumbrule.Rule
-- That a tap is in a raceway or otherwise protected (240.21(B)(1)(3), (B)(2)(3)): from memory.
-- 2023 takes the rating of the source's device where 2017 and 2020 took 125 % of its current.
return {
  title = "Tap of a feeder with sources",
  cite = { ["2017"] = "705.12(B)(2)(2), 240.21(B)", ["2020"] = "705.12(B)(2), 240.21(B)", ["2023"] = "705.12(A)(3), 240.21(B)" },
  about = "circuit",
  applies = function(circuit) return not circuit.status:is("removed") and circuit.role:is("feeder tap") end,
  check = function(circuit, book)
    local edition = tonumber(book:edition("nec"))
    local needed = circuit:tap_need(edition)
    shall.be("The tap ends in one overcurrent device", not circuit.ocpd:is("none"))
    if not circuit.wiring_method:is("EMT", "RMC", "IMC", "PVC 40", "PVC 80", "FMC", "LFMC", "LFNC", "underground raceway") then
      shall.be("A tap of at most 10 ft is in a raceway", circuit.ocpd_distance > book.short_tap)
      review(format("The tap is in no raceway (%s): the inspector looks what protects it from damage", circuit.wiring_method))
    end
    shall.be_at_least("Ampacity of the tap", circuit:usable_ampacity(edition), needed)
  end,
  remedy = "Use larger tap conductors, or a tap of at most 10 ft.",
}

---@type plumbrule.Rule
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
    shall.be_at_least("Ampacity of the tap", circuit:usable_ampacity(edition), needed)
  end,
  remedy = "Use larger tap conductors, or a tap of at most 10 ft.",
}

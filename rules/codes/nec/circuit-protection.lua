---@type plumbrule.Rule
-- The third of three: the device. 240.4(B) next size up, 240.4(D) small conductors; 10 A breakers from
-- 2023 (240.6(A)).
return {
  title = "Overcurrent device of a circuit",
  cite = { ["2017"] = "690.9(B), 705.60(B), 240.4", ["2020"] = "690.9(B), 705.30, 240.4", ["2023"] = "690.9(B), 705.30, 240.4" },
  about = "circuit",
  applies = function(circuit)
    if circuit.status:is("removed") or circuit.role:is("feeder", "feeder tap", "service") then return false end
    -- Strings may do without: the rule on strings in parallel judges that.
    return not (circuit.role:is("PV source", "PV output", "converter output") and circuit.ocpd:is("none"))
  end,
  check = function(circuit, book)
    local edition = tonumber(book:edition("nec"))
    shall.be("There is an overcurrent device", not circuit.ocpd:is("none"))
    shall.be_at_least("Rating of the device against 125 % of the current", circuit.ocpd_rating, book.continuous_factor * circuit:design_current())
    shall.not_exceed("Rating of the device against the largest that protects the conductors", circuit.ocpd_rating, circuit:largest_ocpd(edition))
    if circuit.role:is("PV source", "PV output", "converter output") then
      shall.be("The device is listed for direct current in PV systems", circuit.ocpd_dc_rated)
    end
  end,
  remedy = "Use the next standard size at or above 125 % of the current, and a conductor that it protects.",
}

-- A feeder's load is told by no source. One that carries all of a dwelling needs but a share of its rating (310.12(B),
-- 2017: 310.15(B)(7)(2), from memory).
local function protects_a_feeder(circuit, book, edition)
  local ampacity = circuit:usable_ampacity(edition)
  if circuit.ocpd_rating > circuit:largest_ocpd(edition) and circuit.ocpd_rating >= book.dwelling_service_least
    and circuit.ocpd_rating <= book.dwelling_service_most and ampacity >= book.dwelling_service_share * circuit.ocpd_rating then
    review(format("They carry %.2f A behind a device of %s: enough by the share for dwellings if this feeder carries all of one dwelling, which the inspector sees", ampacity / A, circuit.ocpd_rating))
    return
  end
  shall.not_exceed("Rating of the device against the largest that protects the conductors", circuit.ocpd_rating, circuit:largest_ocpd(edition))
end

---@type plumbrule.Rule
-- The third of three: the device. 240.4(B) next size up, 240.4(D) small conductors; 10 A breakers from
-- 2023 (240.6(A)). Feeders that were there are looked at where sources are behind them, by a rule of their own.
return {
  title = "Overcurrent device of a circuit",
  cite = { ["2017"] = "690.9(B), 705.60(B), 240.4", ["2020"] = "690.9(B), 705.30, 240.4", ["2023"] = "690.9(B), 705.30, 240.4" },
  about = "circuit",
  applies = function(circuit)
    if circuit.status:is("removed") or circuit.role:is("feeder tap", "service") then return false end
    if circuit.role:is("feeder") then return circuit.status:is("new") end
    -- Strings may do without: the rule on strings in parallel judges that.
    return not (circuit.role:is("PV source", "PV output", "converter output") and circuit.ocpd:is("none"))
  end,
  check = function(circuit, book)
    local edition = tonumber(book:edition("nec"))
    shall.be("There is an overcurrent device", not circuit.ocpd:is("none"))
    if circuit.role:is("feeder") then
      if not circuit.ocpd:is("none") then protects_a_feeder(circuit, book, edition) end
      return
    end
    shall.be_at_least(format("Rating of the device against %s %% of the current", 100 * book.continuous_factor), circuit.ocpd_rating, book.continuous_factor * circuit:design_current())
    shall.not_exceed("Rating of the device against the largest that protects the conductors", circuit.ocpd_rating, circuit:largest_ocpd(edition))
    if circuit.role:is("PV source", "PV output", "converter output") then
      shall.be("The device is listed for direct current in PV systems", circuit.ocpd_dc_rated)
    end
  end,
  remedy = "Use the next standard size at or above 125 % of the current, and a conductor that it protects.",
}

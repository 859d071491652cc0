---@type plumbrule.Rule
return {
  title = "Breaker of an inverter",
  cite = { ["2017"] = "690.9(B), 705.60(B), 110.3(B)", ["2020"] = "705.30(B), 110.3(B)", ["2023"] = "705.30(B), 110.3(B)" },
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter, book)
    local model = inverter.model
    local needed = book.continuous_factor * model.output_current
    shall.be_more_than("Breakers on which the inverter is", inverter.breakers:count(), 0)
    for _, breaker in ipairs(inverter.breakers) do
      shall.be_at_least("Rating of the breaker against 125 % of the marked output current", breaker.rating, needed)
      shall.not_exceed("Rating of the breaker against the largest that the maker allows", breaker.rating, model.maximum_ocpd)
      should.not_exceed("Rating of the breaker against the next standard size", breaker.rating, calc.ocpd_up { current = needed, edition = tonumber(book:edition("nec")) })
    end
  end,
  remedy = "Use the next standard breaker at or above 125 % of the marked output current, within what the inverter's instructions allow.",
}

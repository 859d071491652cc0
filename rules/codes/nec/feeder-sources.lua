---@type plumbrule.Rule
-- 215.2 from memory.
-- A feeder that sources feed from its load side, up to the service.
return {
  title = "Feeder with sources behind it",
  cite = { ["2017"] = "705.12(B)(2)(1), 705.60(B), 215.2", ["2020"] = "705.12(B)(1), 705.30, 215.2", ["2023"] = "705.12(A), 705.30, 215.2" },
  about = "panel",
  applies = function(panel)
    if panel.status:is("removed") then return false end
    if not panel.feeder then return false end
    return panel:is_between_array_and_service()
  end,
  check = function(panel, book)
    local edition = tonumber(book:edition("nec"))
    local feeder = panel.feeder
    local ampacity = feeder:usable_ampacity(edition)
    shall.be_at_least(format("Ampacity of the feeder against %s %% of the sources", 100 * book.continuous_factor), ampacity, book.continuous_factor * panel:source_current())
    shall.be_at_least(format("Device of the feeder against %s %% of the sources", 100 * book.continuous_factor), feeder.ocpd_rating, book.continuous_factor * panel:source_current())
    -- The panel's own main stands in their way, too.
    for _, bus in ipairs(panel.busbars) do
      for _, breaker in ipairs(bus.breakers) do
        if breaker.duty:is("main") and not breaker.status:is("removed") then
          shall.be_at_least(format("Main breaker %s against %s %% of the sources behind it", breaker:called(), 100 * book.continuous_factor), breaker.rating, book.continuous_factor * bus:source_current())
        end
      end
    end
    local breakers = 0
    for _, breaker in ipairs(panel.breakers) do
      if not breaker.status:is("removed") then
        breakers = breakers + 1
        shall.be_equal("Device of the feeder, against the breaker in the panel above", feeder.ocpd_rating, breaker.rating)
      end
    end
    if breakers < 1 and panel.fed_from and feeder.ocpd:is("circuit breaker") then
      review(format("Its feeder is told to have a breaker of %s, and no panel shows it: the designer tells where it is", feeder.ocpd_rating))
    end
    shall.not_exceed("Device of the feeder against the largest that protects it", feeder.ocpd_rating, feeder:largest_ocpd(edition))
  end,
  remedy = "Use a larger feeder and the breaker that belongs to it.",
}

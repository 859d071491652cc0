---@type plumbrule.Rule
-- Sections from memory.
-- Below the service the current is smaller; how much, an engineer or a listed series rating tells.
return {
  title = "Breakers against the available fault current",
  cite = "110.9, 110.24",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel, _, design)
    local available = design.service.available_fault_current
    local function holds(what, rating)
      if rating < available and (panel.series_rated or not panel.is_service_panel) then
        review(format("%s: its %s are less than the current at the service. The designer shows the current at the panel itself, or the listed series combination", what, rating))
      else
        shall.be_at_least(what, rating, available)
      end
    end
    holds("Interrupting rating of the panel", panel.interrupting_rating)
    for _, bus in ipairs(panel.busbars) do
      for _, breaker in ipairs(bus.breakers) do
        if not breaker.status:is("removed") then
          local what = format("Interrupting rating of breaker %s", breaker:called())
          if panel.is_service_panel and breaker.duty:is("main") then
            shall.be_at_least(what, breaker.interrupting_rating, available) -- nothing stands before it
          else
            holds(what, breaker.interrupting_rating)
          end
        end
      end
    end
  end,
  remedy = "Use breakers of a higher interrupting rating, or a listed series combination.",
}

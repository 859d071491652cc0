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
    if not panel.is_service_panel and panel.interrupting_rating < available then
      review("The current at the service exceeds the panel's rating: the current at the panel itself, or a series rating, is to be shown", panel.interrupting_rating)
      return
    end
    shall.be_at_least("Interrupting rating of the panel", panel.interrupting_rating, available)
    for _, bus in ipairs(panel.busbars) do
      for _, breaker in ipairs(bus.breakers) do
        if panel.is_service_panel and not breaker.status:is("removed") then
          shall.be_at_least(format("Interrupting rating of breaker %s", breaker:called()), breaker.interrupting_rating, available)
        end
      end
    end
  end,
  remedy = "Use breakers of a higher interrupting rating, or a listed series combination.",
}

---@type plumbrule.Rule
return {
  title = "A panel against its marking",
  cite = "110.3(B)",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel)
    local model = panel.model
    shall.be("Listed to UL 67", model.listings:has("UL 67"))
    shall.not_exceed("Spaces in use and free", panel.spaces, model.spaces)
    for _, bus in ipairs(panel.busbars) do
      shall.not_exceed("Rating that the design takes for the bus", bus.rating, model.bus_rating)
      if not panel.main_lugs_only then
        shall.not_exceed("Protecting device against the largest main", bus.protecting_device, model.maximum_main)
      end
      for _, breaker in ipairs(bus.breakers) do
        -- Those that sources feed have a rule of their own.
        if breaker.status:is("new") and breaker.duty:is("main", "load", "feeder") and not breaker.listed_for_panel then
          shall.be(format("Breaker %s is listed for this panel", breaker:called()), false)
        end
      end
    end
  end,
  remedy = "Take the figures from the label inside the panel's door.",
}

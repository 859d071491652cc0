-- A main that is put in anew changes what the service carries, unless its rating is that of the service that stays.
local function has_changed_main(design, service)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.is_service_panel then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          if breaker.duty:is("main") and breaker.status:is("new") and not same(breaker.rating, service.rating) then return true end
        end
      end
    end
  end
  return false
end

-- The rating of the service, or that of a smaller main: a main that is lowered for the bus carries the loads still.
local function smallest_main(design, rating)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.is_service_panel and not panel.split_bus then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          if breaker.duty:is("main") and not breaker.status:is("removed") then rating = smallest(rating, breaker.rating) end
        end
      end
    end
  end
  return rating
end

---@type plumbrule.Rule
return {
  title = "Load of a changed service",
  cite = { ["2017"] = "220.82, 220.83, 220.87", ["2020"] = "220.82, 220.83, 220.87", ["2023"] = "220.82, 220.83, 220.87" },
  about = "service",
  applies = function(service, _, design)
    if not service.work:is("untouched") and not service.like_for_like or has_changed_main(design, service) then return true end
    return service.like_for_like and design.project.scope:has("EV charger")
  end,
  check = function(service, book, design)
    local edition = tonumber(book:edition("nec"))
    local limit = smallest_main(design, service.rating)
    local loads = service.load_calculation
    -- What comes anew is in no meter's record.
    local new_load = 0 * A
    if design.project.scope:has("EV charger") then new_load = loads.ev_charging / service.voltage end
    shall.meet_one_of {
      { "optional method", function()
          shall.not_exceed("Load of the dwelling", loads:optional(edition), limit)
        end },
      { "existing dwelling", function()
          shall.not_exceed("Load of the dwelling", loads:existing(edition), limit)
        end },
      { "metered peak", function()
          shall.not_exceed("125 % of a year's metered peak and the load that is added", loads:metered() + new_load, limit)
        if loads.adds_air_conditioning and loads:metered() + new_load + largest(loads.heating, loads.cooling) / service.voltage > limit then
          review("Heating or air conditioning is added, which the metered peak has not seen, and with all of it the service would be too small: the designer shows how much of it is new")
        end
        end },
    }
  end,
  remedy = "Use a larger service, or manage the loads.",
}

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

local function counts_its_circuits(loads, book)
  if loads.small_appliance_circuits < book.small_appliance_least then
    shall.be_at_least("Small-appliance circuits that it counts", loads.small_appliance_circuits, book.small_appliance_least)
  end
  if loads.laundry_circuits < book.laundry_least then
    shall.be_at_least("Laundry circuits that it counts", loads.laundry_circuits, book.laundry_least)
  end
end

---@type plumbrule.Rule
-- That every small-appliance and laundry circuit that a dwelling must have is counted, 210.11(C): from memory.
return {
  title = "Load of a changed service",
  cite = "220.82, 220.83, 220.87, 210.11(C)",
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
          counts_its_circuits(loads, book)
        end },
      { "existing dwelling", function()
          shall.not_exceed("Load of the dwelling", loads:existing(edition), limit)
          if loads.small_appliance_circuits < book.small_appliance_least or loads.laundry_circuits < book.laundry_least then
            review(format("It counts %d small-appliance and %d laundry circuits, fewer than a dwelling is wired with today: the inspector looks whether the house has no more", loads.small_appliance_circuits, loads.laundry_circuits))
          end
        end },
      { "metered peak", function()
          shall.not_exceed("125 % of a year's metered peak and the load that is added", loads:metered() + new_load, limit)
        if loads.adds_air_conditioning and loads:metered() + new_load + largest(loads.heating, loads.cooling) / service.voltage > limit then
          review("Heating or air conditioning is added, which the metered peak has not seen, and with all of it the service would be too small: the designer shows how much of it is new")
        end
        end },
    }
    if design.project.scope:has("EV charger") then
      shall.be_more_than("Charging of vehicles that the load counts, with a charger in the project", loads.ev_charging, 0 * VA)
    end
  end,
  remedy = "Use a larger service, or manage the loads.",
}

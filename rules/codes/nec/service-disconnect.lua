-- What the project is told to do is seen on the service and the panels.
local function work_is_shown(service, design)
  local scope = design.project.scope
  if scope:has("service upgrade") and service.work:is("untouched") then
    review("The project is told to upgrade the service, and the service to stay untouched: the designer tells which holds")
  end
  if not scope:has("panel replacement") then return end
  for _, panel in ipairs(design.panels) do
    if panel.status:is("new") then return end
  end
  review("The project is told to replace a panel, and none of its panels is new: the designer shows which")
end

-- A main that is lowered for the bus may be the service disconnect itself, whose rating is then told too large.
local function mains_may_be_it(design, least)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.is_service_panel and not panel.split_bus and panel:mains() < 2 then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          if breaker.duty:is("main") and breaker.status:is("new") and breaker.rating < least then
            review(format("The new main breaker %s has %s, less than a service disconnect may have (%s): the designer shows the disconnect that stands before it", breaker:called(), breaker.rating, least))
          end
        end
      end
    end
  end
end

---@type plumbrule.Rule
-- That the socket of the meter is rated for the service (230.66(B), from 2020), and (D), of all other services, and that a townhouse is a one-family dwelling: from memory.
return {
  title = "Size of the service disconnect",
  cite = { ["2017"] = "230.79(C), (D)", ["2020"] = "230.66(B), 230.79(C), (D)", ["2023"] = "230.66(B), 230.79(C), (D)" },
  about = "service",
  check = function(service, book, design)
    work_is_shown(service, design)
    if service.disconnect_rating > service.rating then
      review(format("Its disconnect of %s is larger than the service's %s: the designer tells which of the two the service has", service.disconnect_rating, service.rating))
    end
    local least = book.other_disconnect_minimum
    if design.building.occupancy:is("one-family dwelling", "townhouse") then least = book.service_disconnect_minimum end
    if service.work:is("untouched") and service.disconnect_rating < least then
      review(format("The service stays as it is, and its disconnect of %s is smaller than a new one may be (%s): the authority decides whether it may stay", service.disconnect_rating, least))
    else
      shall.be_at_least("Rating of the service disconnect", service.disconnect_rating, least)
    end
    if service.disconnect_rating >= least then mains_may_be_it(design, least) end
    -- The socket of the meter carries what the service carries.
    if not service.work:is("untouched") and tonumber(book:edition("nec")) >= 2020 then
      for _, meter in ipairs(design.meters) do
        if meter.revenue then
          shall.be_at_least(format("Rating of the socket of meter %s against the service disconnect's", meter:called()), meter.rating, service.disconnect_rating)
        end
      end
    end
  end,
  remedy = "A new or changed service takes a disconnect of at least 100 A for a one-family dwelling, else 60 A, and a meter socket for as much.",
}

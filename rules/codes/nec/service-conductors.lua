-- A main that is put in anew is judged though the rest of the service stays.
local function has_new_main(design)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.is_service_panel then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          if breaker.duty:is("main") and breaker.status:is("new") then return true end
        end
      end
    end
  end
  return false
end

-- What its size carries by the table at the terminals, and no more than the design tells of it.
local function carries(service, degrees)
  local column = calc.terminal_ampacity {
    size = service.conductor_size, material = service.conductor_material,
    insulation = celsius(75), terminal = celsius(degrees), sets = service.parallel_sets,
  }
  return smallest(service.conductor_ampacity, column)
end

---@type plumbrule.Rule
-- 230.42, 110.14(C) and that the share holds for the service of one dwelling unit from memory. The larger of the two
-- ratings counts: the disconnect is what protects the conductors. The table for dwellings tells one conductor per
-- pole; its 83 % of the rating serves for several. Outside its ratings the ordinary column carries the whole rating:
-- that of 60 °C up to 100 A, unless the terminals are marked for more.
return {
  title = "Conductors of a changed service",
  cite = { ["2017"] = "310.15(B)(7), 310.10(H), 230.42, 110.14(C)", ["2020"] = "310.12, 310.10(G), 230.42, 110.14(C)", ["2023"] = "310.12, 310.10(G), 230.42, 110.14(C)" },
  about = "service",
  applies = function(service, _, design) return not service.work:is("untouched") or has_new_main(design) end,
  check = function(service, book, design)
    local rating = largest(service.rating, service.disconnect_rating)
    if service.parallel_sets > 1 then
      shall.be_at_least("Section of each of the conductors in parallel in kcmil (1/0 AWG is the least)", calc.conductor_area { size = service.conductor_size }, book.parallel_least)
    end
    local serves_one = design.building.occupancy:is("one-family dwelling", "townhouse")
    local has_share = rating >= book.dwelling_service_least and rating <= book.dwelling_service_most
    if serves_one and has_share and service.parallel_sets < 2 then
      local needed = calc.dwelling_conductor { rating = rating, material = service.conductor_material }
      shall.be_at_least(format("Section of the service conductors in kcmil (%s is needed)", needed),
        calc.conductor_area { size = service.conductor_size }, calc.conductor_area { size = needed })
      local least = book.dwelling_service_share * rating
      if service.conductor_ampacity < least then
        shall.be_at_least("Ampacity told of the service conductors", service.conductor_ampacity, least)
      end
    elseif serves_one and has_share then
      shall.be_at_least("Ampacity of the service conductors", carries(service, 75), book.dwelling_service_share * rating)
    elseif rating <= 100 * A and carries(service, 60) < rating and carries(service, 75) >= rating then
      review(format("The conductors carry %s at terminals of 60 °C and are to carry %s: they serve if the inspector finds both ends marked for 75 °C", carries(service, 60), rating))
    elseif design.building.occupancy:is("two-family dwelling") and has_share and carries(service, 75) < rating
      and carries(service, 75) >= book.dwelling_service_share * rating then
      review(format("The conductors carry %s of %s: they serve by the share for dwellings if the inspector finds that the service is that of one of the two dwellings alone", carries(service, 75), rating))
    else
      shall.be_at_least("Ampacity of the service conductors", carries(service, 75), rating)
    end
  end,
  remedy = "Pull conductors of the size that the rating asks for, or lower the rating.",
}

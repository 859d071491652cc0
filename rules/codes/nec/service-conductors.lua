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

---@type plumbrule.Rule
-- 230.42 from memory. The larger of the two ratings counts: the disconnect is what protects the conductors.
-- The table for dwellings tells one conductor per pole; its 83 % of the rating serves for several.
return {
  title = "Conductors of a changed service",
  cite = { ["2017"] = "310.15(B)(7), 230.42", ["2020"] = "310.12, 230.42", ["2023"] = "310.12, 230.42" },
  about = "service",
  applies = function(service, _, design) return not service.work:is("untouched") or has_new_main(design) end,
  check = function(service, book, design)
    local rating = largest(service.rating, service.disconnect_rating)
    local is_dwelling = design.building.occupancy:is("one-family dwelling", "two-family dwelling")
    if is_dwelling and service.parallel_sets < 2 then
      local needed = calc.dwelling_conductor { rating = rating, material = service.conductor_material }
      shall.be_at_least(format("Section of the service conductors in kcmil (%s is needed)", needed),
        calc.conductor_area { size = service.conductor_size }, calc.conductor_area { size = needed })
    else
      local column = calc.terminal_ampacity {
        size = service.conductor_size, material = service.conductor_material,
        insulation = celsius(75), terminal = celsius(75), sets = service.parallel_sets,
      }
      if is_dwelling then rating = book.dwelling_service_share * rating end
      shall.be_at_least("Ampacity of the service conductors", smallest(service.conductor_ampacity, column), rating)
    end
  end,
  remedy = "Pull conductors of the size that the rating asks for, or lower the rating.",
}

---@type plumbrule.Rule
-- 230.42 from memory. The larger of the two ratings counts: the disconnect is what protects the conductors.
return {
  title = "Conductors of a changed service",
  cite = { ["2017"] = "310.15(B)(7), 230.42", ["2020"] = "310.12, 230.42", ["2023"] = "310.12, 230.42" },
  about = "service",
  applies = function(service) return not service.work:is("untouched") end,
  check = function(service, _, design)
    if design.building.occupancy:is("one-family dwelling", "two-family dwelling") then
      local needed = calc.dwelling_conductor { rating = largest(service.rating, service.disconnect_rating), material = service.conductor_material }
      shall.be_at_least(format("Section of the service conductors in kcmil (%s is needed)", needed),
        calc.conductor_area { size = service.conductor_size }, calc.conductor_area { size = needed })
    else
      shall.be_at_least("Ampacity of the service conductors", service.conductor_ampacity, service.disconnect_rating)
    end
  end,
  remedy = "Pull conductors of the size that the rating asks for, or lower the rating.",
}

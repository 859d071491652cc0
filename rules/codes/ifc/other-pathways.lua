---@type plumbrule.Rule
return {
  title = "Pathways and smoke ventilation on the roof of another occupancy",
  cite = { ["2012"] = "605.11.3.3.2, 605.11.3.3.3 (from memory)", ["2015"] = "605.11.1.3.2, 605.11.1.3.3 (from memory)",
    ["2018"] = "1204.3.2, 1204.3.3 (from memory)", ["2021"] = "1205.3.2, 1205.3.3 (from memory)" },
  about = "building",
  applies = function(building, _, design)
    return design.modules:count() > 0
      and not building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse", "accessory")
  end,
  check = function()
    review("Pathways over the middle of the roof and to hatches, skylights and standpipes, and room to let smoke out between sections, are for the fire official to see on the plan")
  end,
  remedy = "Show the pathways and the places for smoke ventilation on the roof plan.",
}

---@type plumbrule.Rule
return {
  title = "Growth of lateral load on an existing building",
  cite = "806.3 (from memory)",
  about = "roof",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(roof, book)
    -- What stands apart is braced by nothing of the house, and braces none of it.
    local house, apart = { weight = 0 * lbf, array = 0 * lbf }, { weight = 0 * lbf, array = 0 * lbf }
    for _, plane in ipairs(roof.planes) do
      local building = house
      if plane:stands_apart() then building = apart end
      building.weight = building.weight + plane.dead_load * plane:area()
      if plane:module_count() > 0 then building.array = building.array + plane:array_dead_load() * plane:covered_area() end
    end
    local share = 0
    for _, building in ipairs({ house, apart }) do
      if building.array > 0 * lbf then share = largest(share, building.array / building.weight) end
    end
    if share > book.lateral_increase_limit and not same(share, book.lateral_increase_limit) then
      review(format("The array weighs %.1f %% of the roof; above %.1f %% the building's lateral strength needs a study", 100 * share, 100 * book.lateral_increase_limit))
    else
      shall.not_exceed("Weight of the array over that of the roof", share, book.lateral_increase_limit)
    end
  end,
  remedy = "Have an engineer look at the building's bracing.",
}

---@type plumbrule.Rule
return {
  title = "Growth of lateral load on an existing building",
  cite = "806.3 (from memory)",
  about = "roof",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(roof, book, design)
    local weight = 0 * lbf
    for _, plane in ipairs(roof.planes) do weight = weight + plane.dead_load * plane:area() end
    local share = design:array_dead_load() * roof:array_area() / weight
    if share > book.lateral_increase_limit and not same(share, book.lateral_increase_limit) then
      review(format("The array weighs %.1f %% of the roof; above %.1f %% the building's lateral strength needs a study", 100 * share, 100 * book.lateral_increase_limit))
    else
      shall.not_exceed("Weight of the array over that of the roof", share, book.lateral_increase_limit)
    end
  end,
  remedy = "Have an engineer look at the building's bracing.",
}

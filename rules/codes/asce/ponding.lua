---@type plumbrule.Rule
return {
  title = "Ponding below the array",
  cite = "8.4 (from memory)",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book)
    if plane.slope < book.ponding_slope then
      review(format("The roof slopes less than %s: an engineer looks at rain and melt water that stay on it, with the array's weight", book.ponding_slope))
    else
      shall.be_at_least("Slope, from which on water runs off by itself,", plane.slope, book.ponding_slope, deg)
    end
  end,
  remedy = "Show that the roof drains, or have an engineer judge ponding with the array's weight.",
}

---@type plumbrule.Rule
return {
  title = "Height of the array above the roof",
  cite = "array_height_limit and array_gap_least, as the town sets them",
  about = "racking",
  check = function(racking, book)
    shall.be_less_than("Clear space below the modules against their top", racking.gap_below_modules, racking.height_above_roof, inch)
    if book.array_height_limit < 1000 * inch then
      shall.not_exceed("Top of the modules above the roof", racking.height_above_roof, book.array_height_limit, inch)
    end
    if book.array_gap_least > 0 * inch then
      shall.be_at_least("Clear space below the modules", racking.gap_below_modules, book.array_gap_least, inch)
    end
    if book.array_gap_most < 1000 * inch then
      shall.not_exceed("Clear space below the modules, at most", racking.gap_below_modules, book.array_gap_most, inch)
    end
  end,
  remedy = "Choose shorter or longer mounts, so that the array lies as high as the town and the racking's listing ask.",
}

---@type plumbrule.Rule
return {
  title = "Height of the array above the roof",
  cite = "array_height_limit and array_gap_least, as the town sets them",
  about = "racking",
  check = function(racking, book, design)
    shall.be_less_than("Clear space below the modules against their top", racking.gap_below_modules, racking.height_above_roof, inch)
    -- Wind and limits of height go by the top: between it and the clear space there is room for the module.
    local thickest = 0 * inch
    for _, module in ipairs(design.modules) do thickest = largest(thickest, module.model.thickness) end
    local room = racking.height_above_roof - racking.gap_below_modules
    if room < thickest and not same(room, thickest) then
      review(format("The top of the modules is told to be %s above the roof and the clear space below them %s, which leaves less than their thickness, %s: the designer tells which is built", racking.height_above_roof, racking.gap_below_modules, thickest))
    end
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

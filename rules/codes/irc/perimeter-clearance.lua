---@type plumbrule.Rule
return {
  title = "Clear width all around the array",
  cite = "perimeter_setback, as the town sets it",
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 or same(book.perimeter_setback, 0 * inch) then return false end
    if book.exempt_low_slope and plane.slope <= book.low_slope then return false end
    if plane.slope > book.exempt_steeper_than then return false end
    if book.exempt_detached and plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() then return false end
    if book.exempt_sprinklered and not design.building.sprinklers:is("none") then return false end
    return (not book.exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book)
    for _, edge in ipairs({ "eave", "rake", "ridge", "hip", "valley", "wall" }) do
      if plane:has_edge(edge) then
        shall.be_at_least(format("Clear width along the %s", edge), plane:clearance(edge), book.perimeter_setback, inch)
      end
    end
  end,
  remedy = "Draw the array in from the edges of the roof plane.",
}

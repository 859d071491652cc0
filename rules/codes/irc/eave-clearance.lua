---@type plumbrule.Rule
return {
  title = "Clear width along the eave",
  cite = "eave_setback, as the town sets it",
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 or same(book.eave_setback, 0 * inch) or not plane:has_edge("eave") then return false end
    if book.exempt_low_slope and plane.slope <= book.low_slope then return false end
    if plane.slope > book.exempt_steeper_than then return false end
    if book.exempt_detached and plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() then return false end
    if book.exempt_sprinklered and not design.building.sprinklers:is("none") then return false end
    return (not book.exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book)
    shall.be_at_least("Clear width along the eave", plane:clearance("eave"), book.eave_setback, inch)
  end,
  remedy = "Move the array away from the eave.",
}

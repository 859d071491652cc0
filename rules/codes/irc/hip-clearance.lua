---@type plumbrule.Rule
return {
  title = "Clear width beside a hip",
  cite = "hip_setback, as the town sets it",
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 or same(book.hip_setback, 0 * inch) or not plane:has_edge("hip") then return false end
    if book.exempt_low_slope and plane.slope <= book.low_slope then return false end
    if plane.slope > book.exempt_steeper_than then return false end
    if book.exempt_detached and plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() then return false end
    if book.exempt_sprinklered and not design.building.sprinklers:is("none") then return false end
    return (not book.exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book, design)
    local others = 0
    for _, other in ipairs(design.roof.planes) do
      if not same(other, plane) and other:has_edge("hip") and other.modules:count() > 0 then others = others + 1 end
    end
    local needed = book.hip_setback
    if others < 1 and book.hip_valley_one_side_free then needed = 0 * inch end
    shall.be_at_least("Clear width beside the hip", plane:clearance("hip"), needed, inch)
  end,
  remedy = "Move or leave out the modules next to the hip.",
}

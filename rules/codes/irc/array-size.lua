---@type plumbrule.Rule
return {
  title = "Size of the array and of its sections",
  cite = "array_section_limit and array_area_limit, as the town sets them",
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 or (book.array_area_limit >= 1000000 * sq_ft and book.array_coverage_limit >= 1
      and book.array_section_limit >= 10000 * ft) then return false end
    if book.exempt_low_slope and plane.slope <= book.low_slope then return false end
    if plane.slope > book.exempt_steeper_than then return false end
    if book.exempt_detached and plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() then return false end
    if book.exempt_sprinklered and not design.building.sprinklers:is("none") then return false end
    return (not book.exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book, design)
    shall.not_exceed("Area of all modules", design.roof:array_area(), book.array_area_limit, sq_ft)
    shall.not_exceed("Share of the whole roof under modules", design.roof:covered_share(), book.array_coverage_limit)
    local reach = plane:largest_section_length(book.array_section_gap)
    shall.not_exceed("Reach of the largest section", reach, book.array_section_limit, ft)
  end,
  remedy = "Leave out modules, or part the array into sections with a clear gap between them.",
}

---@type plumbrule.Rule
return {
  title = "Reach of one section of the array",
  cite = { ["2012"] = "605.11.3", ["2015"] = "605.11.1.2.1", ["2018"] = "1204.3 (from memory)", ["2021"] = "1205.3 (from memory)" },
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 then return false end
    -- Since 2018 the figure stands among the rules for other occupancies.
    return not book.ifc_exempt_residential_code
      or not design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse")
  end,
  check = function(plane, book)
    local _, along, up = plane:largest_section_length(book.ifc_section_gap)
    shall.not_exceed("Reach of a section along the eave", along, book.ifc_array_limit, ft)
    shall.not_exceed("Reach of a section up the slope", up, book.ifc_array_limit, ft)
  end,
  remedy = "Part the array into sections with a clear gap between them.",
}

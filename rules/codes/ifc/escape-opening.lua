---@type plumbrule.Rule
return {
  title = "Roof below an escape opening",
  cite = { ["2012"] = "no section", ["2015"] = "no section", ["2018"] = "1204.2.2", ["2021"] = "1205.2.2 (number from memory)" },
  about = "escape_opening",
  applies = function(opening, book, design)
    if book.ifc_escape_pathway_width <= 0 * inch or book.ifc_exempt_residential_code then return false end
    return not (book.ifc_exempt_low_slope and opening.plane.slope <= book.ifc_low_slope)
      and (not book.ifc_exempt_no_roof_operations or design.building.roof_operations)
  end,
  check = function(opening, book)
    shall.be("No module lies straight below the opening", opening:clear_below(opening.width))
    shall.be_at_least("Clear width below the opening", opening:clear_width_below(), book.ifc_escape_pathway_width, inch)
  end,
  remedy = "Move the modules from below the window, and keep a pathway to it.",
}

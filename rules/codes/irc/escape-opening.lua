---@type plumbrule.Rule
return {
  title = "Roof below an escape opening",
  cite = { ["2018"] = "R324.6.3 (number from memory)", ["2021"] = "R324.6.3 (number from memory)", ["2024"] = "R329.6.3 (number from memory)" },
  about = "escape_opening",
  applies = function(opening, book, design)
    if book.exempt_low_slope and opening.plane.slope <= book.low_slope then return false end
    return not book.exempt_no_roof_operations or design.building.roof_operations
  end,
  check = function(opening, book)
    shall.be("No module lies straight below the opening", opening:clear_below(opening.width))
    shall.be_at_least("Clear width below the opening", opening:clear_width_below(), book.escape_pathway_width, inch)
  end,
  remedy = "Move the modules from below the window, and keep a pathway to it.",
}

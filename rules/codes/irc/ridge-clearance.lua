---@type plumbrule.Rule
return {
  title = "Clear width at the ridge",
  cite = { ["2018"] = "R324.6.2", ["2021"] = "R324.6.2" },
  about = "roof_plane", -- one finding per roof plane
  applies = function(plane, book)
    return plane.modules:count() > 0 and plane.slope > book.low_slope and plane:has_edge("ridge")
  end,
  check = function(plane, book, design)
    local share = design.roof:covered_share()
    local limit = book.ridge_coverage_limit
    if not design.building.sprinklers:is("none") then limit = book.ridge_coverage_limit_sprinklered end
    local needed = book.ridge_setback_small
    if share > limit then needed = book.ridge_setback_large end
    shall.be_at_least("Clear width below the ridge", plane:clearance("ridge"), needed, inch)
  end,
  remedy = "Lower or drop the top row of modules.",
}

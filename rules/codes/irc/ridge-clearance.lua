---@type plumbrule.Rule
return {
  title = "Clear width at the ridge",
  cite = { ["2018"] = "R324.6.2", ["2021"] = "R324.6.2", ["2024"] = "R329.6.2" },
  about = "roof_plane", -- one finding per roof plane
  applies = function(plane, book, design)
    if plane.modules:count() < 1 or not plane:has_edge("ridge") then return false end
    if book.exempt_low_slope and plane.slope <= book.low_slope then return false end
    if plane.slope > book.exempt_steeper_than then return false end
    if book.exempt_detached and plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() then return false end
    if book.exempt_sprinklered and not design.building.sprinklers:is("none") then return false end
    return (not book.exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book, design)
    local share, area = plane:building_share(), design.roof:array_area()
    local limit = book.ridge_coverage_limit
    if not design.building.sprinklers:is("none") then limit = book.ridge_coverage_limit_sprinklered end
    local is_small = share < limit
    if same(share, limit) then is_small = book.ridge_limit_inclusive end
    local needed = book.ridge_setback_large
    if is_small and area <= book.ridge_area_limit then needed = book.ridge_setback_small end
    if not book.ridge_both_sides then
      local sides = 0
      for _, other in ipairs(design.roof.planes) do
        if other:has_edge("ridge") and other.modules:count() > 0 then sides = sides + 1 end
      end
      if sides < 2 then needed = 0 * inch end
    end
    shall.be_at_least("Clear width below the ridge", plane:clearance("ridge"), needed, inch)
  end,
  remedy = "Lower or drop the top row of modules.",
}

---@type plumbrule.Rule
return {
  title = "Clear width at the ridge of a dwelling",
  cite = { ["2012"] = "605.11.3.2", ["2015"] = "605.11.1.2", ["2018"] = "1204.2.1", ["2021"] = "1205.2.1" },
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 or not plane:has_edge("ridge") then return false end
    if not design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse", "accessory") then return false end
    if book.ifc_exempt_residential_code then return false end
    if book.ifc_exempt_low_slope and plane.slope <= book.ifc_low_slope then return false end
    if book.ifc_exempt_detached
      and (plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() or design.building.occupancy:is("accessory")) then return false end
    return (not book.ifc_exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book, design)
    local needed = book.ifc_ridge_setback
    if book.ifc_ridge_setback_large > 0 * inch then
      local limit = book.ifc_ridge_coverage_limit
      if not design.building.sprinklers:is("none") then limit = book.ifc_ridge_coverage_limit_sprinklered end
      local share = plane:building_share()
      if share < limit or same(share, limit) then
        needed = largest(needed, book.ifc_ridge_setback_small)
      else
        needed = largest(needed, book.ifc_ridge_setback_large)
      end
    end
    shall.be_at_least("Clear width below the ridge", plane:clearance("ridge"), needed, inch)
  end,
  remedy = "Lower or drop the top row of modules.",
}

---@type plumbrule.Rule
return {
  title = "Clear width around the roof of another occupancy",
  cite = { ["2012"] = "605.11.3.3.1 (from memory)", ["2015"] = "605.11.1.3.1 (from memory)", ["2018"] = "1204.3.1", ["2021"] = "1205.3.1" },
  about = "roof_plane",
  applies = function(plane, _, design)
    return plane.modules:count() > 0
      and not design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse", "accessory")
      and plane:module_count() > 0
  end,
  check = function(plane, book, design)
    local needed = book.ifc_perimeter
    if design.building.length <= book.ifc_short_side or design.building.width <= book.ifc_short_side then
      needed = book.ifc_perimeter_small
    end
    for _, edge in ipairs({ "eave", "rake", "ridge", "hip", "wall" }) do
      if plane:has_edge(edge) then
        shall.be_at_least(format("Clear width along the %s", edge), plane:clearance(edge), needed, inch)
      end
    end
    if plane.slope > book.ifc_low_slope then
      review("The official may let a roof like a dwelling's follow the rules for dwellings instead")
    end
  end,
  remedy = "Draw the array in from the edges of the roof.",
}

-- That nobody would cut this roof is the official's to find: with that every rule on access falls away.
local function is_waived(design)
  for _, paper in ipairs(design.papers) do
    if paper.kind:is("fire access waiver") and paper.state:is("approved") then
      shall.be("The fire official has approved on paper that this roof would not be cut", true)
      return
    end
  end
  review("It is told that the fire department would not cut this roof, and so nothing is asked of its pathways and edges: that is for the fire official to find, and no approved fire access waiver is among the papers")
end

---@type plumbrule.Rule
return {
  title = "Access pathways on a dwelling's roof",
  cite = { ["2012"] = "605.11.3.2", ["2015"] = "605.11.1.2", ["2018"] = "1204.2.1.1", ["2021"] = "1205.2.1.1" },
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 then return false end
    if not design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse", "accessory") then return false end
    if book.ifc_exempt_residential_code then return false end
    if book.ifc_exempt_low_slope and plane.slope <= book.ifc_low_slope then return false end
    return not (book.ifc_exempt_detached
      and (plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() or design.building.occupancy:is("accessory")))
  end,
  check = function(plane, book, design)
    if book.ifc_exempt_no_roof_operations and not design.building.roof_operations then
      is_waived(design)
      return
    end
    local needed, width = book.ifc_pathways_per_plane, book.ifc_pathway_width
    if design.roof.shape:is("hip") then needed = book.ifc_pathways_per_hip_plane end
    if same(needed, 1) then
      shall.be_at_least("Widest clear strip from eave to ridge", plane:pathway_width(), width, inch)
    else
      shall.be_at_least("Pathways from eave to ridge on this plane", plane:pathway_count(width), needed)
    end
    if book.ifc_pathways_per_building > 0 then
      shall.be_at_least("Planes with a clear pathway", plane:building_pathways(width), book.ifc_pathways_per_building)
    end
  end,
  remedy = "Leave out a column of modules at one or both ends of the plane.",
}

---@type plumbrule.Rule
return {
  title = "Clear width beside hips and valleys of a dwelling",
  cite = { ["2012"] = "605.11.3.2.3 (number from memory)", ["2015"] = "605.11.1.2.4", ["2018"] = "no section", ["2021"] = "no section" },
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1
      or not (book.ifc_hip_valley_setback > 0 * inch and (plane:has_edge("hip") or plane:has_edge("valley"))) then return false end
    if not design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse", "accessory") then return false end
    if book.ifc_exempt_residential_code then return false end
    if book.ifc_exempt_low_slope and plane.slope <= book.ifc_low_slope then return false end
    if book.ifc_exempt_detached
      and (plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() or design.building.occupancy:is("accessory")) then return false end
    return (not book.ifc_exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book, design)
    for _, edge in ipairs({ "hip", "valley" }) do
      if plane:has_edge(edge) then
        local others, needed = 0, 0 * inch
        for _, other in ipairs(design.roof.planes) do
          if not same(other, plane) and other:has_edge(edge) and other.modules:count() > 0 then others = others + 1 end
        end
        -- Where modules lie on one side only, they may reach the hip or valley.
        if others > 0 then needed = book.ifc_hip_valley_setback end
        shall.be_at_least(format("Clear width beside the %s", edge), plane:clearance(edge), needed, inch)
      end
    end
  end,
  remedy = "Move or leave out the modules next to the hip or valley, on both sides.",
}

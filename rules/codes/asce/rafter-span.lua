---@type plumbrule.Rule
return {
  title = "Span of the rafters against the roof",
  cite = "common practice, no source",
  about = "roof_plane",
  applies = function(plane, _, design)
    if plane.modules:count() < 1 or not plane.framing.kind:is("rafter") then return false end
    if plane:has_edge("ridge") or plane:has_edge("hip") then return true end
    -- A roof that leans on a wall, or has one slope alone; a flat one stands on walls between.
    return not design.roof.shape:is("flat") and (plane:has_edge("wall") or design.roof.shape:is("monoslope"))
  end,
  check = function(plane, book)
    local top = "ridge"
    if not plane:has_edge("ridge") and not plane:has_edge("hip") then top = "its upper edge" end
    local reach = plane:rafter_reach() - plane.eave_overhang
    local span = plane.framing.span
    if span >= book.free_rafter_share * reach then
      shall.be_at_least("Span of the rafters, for which no support between is needed,", span, book.free_rafter_share * reach, ft)
    elseif span < book.least_rafter_share * reach then
      review(format("The rafters are said to span %s of the %.1f ft in plan from wall to %s: show the purlins, walls or struts that hold them between, and what these stand on", span, reach / (1 * ft), top))
    elseif plane.framing.held_between then
      shall.be_at_least("Span of the rafters, for which one support between would do,", span, book.least_rafter_share * reach, ft)
    else
      review(format("The rafters are said to span %s of the %.1f ft in plan from wall to %s, and nothing to hold them between: show where they end, or give the span they have", span, reach / (1 * ft), top))
    end
  end,
  remedy = "Give the longest span in plan between two supports, and show the supports between wall and ridge on the drawings.",
}

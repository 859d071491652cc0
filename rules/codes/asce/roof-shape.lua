---@type plumbrule.Rule
return {
  title = "Shape of the roof for wind and snow",
  cite = "30.3 (7-10: 30.4), 7.6",
  about = "roof",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(roof, book)
    local hip, ridge -- the first plane with one
    for _, plane in ipairs(roof.planes) do
      if not hip and plane:has_edge("hip") then hip = plane end
      if not ridge and plane:has_edge("ridge") then ridge = plane end
    end
    local is_hip = roof.shape:is("hip")
    local is_met = ridge and roof.shape:is("monoslope") and ridge:edge_is_met("ridge")
    -- The first plane with an edge that another must meet and none does; a roof of one slope has a ridge of its own.
    local lone, lone_edge
    local function look(plane, edge)
      if not lone and plane:has_edge(edge) and not plane:edge_is_met(edge) then lone, lone_edge = plane, edge end
    end
    local closed -- the first plane that has no outer edge where its water could leave
    local odd, odd_says -- the first plane that calls a shared edge otherwise than its neighbour
    local single -- the first plane with modules that falls one way from its top, as no gable or hip roof does
    local bare -- the first plane with modules that ends at a wall which carries no roof
    local near, near_house -- the first plane that is told to stand apart and does not
    for _, plane in ipairs(roof.planes) do
      if roof.shape:is("gable", "hip") then look(plane, "ridge") end
      if not closed and not plane:has_edge("eave") and not plane:has_edge("valley") and not (roof.shape:is("flat") and plane:has_edge("rake")) then
        closed = plane
      end
      look(plane, "hip")
      look(plane, "valley")
      local is_of_two = plane:has_edge("ridge") or plane:has_edge("hip") or not roof.shape:is("gable", "hip")
      if not single and not is_of_two and plane.modules:count() > 0 and plane.slope > book.one_slope_above then single = plane end
      if not bare and plane.modules:count() > 0 and plane:has_edge("wall") and not plane:walls_are_met() then bare = plane end
      local agrees, other, edge, other_edge = plane:edges_agree()
      if not near then
        local meets, house = plane:meets_house()
        if meets then near, near_house = plane, house end
      end
      if not odd and not agrees then odd, odd_says = plane, format("a %s, which %s calls a %s", edge, other, other_edge) end
    end
    if is_hip and not hip then
      review("The design says that the roof is a hip roof, but no plane of it has a hip: wind lifts a gable roof harder")
    elseif hip and not is_hip then
      review(format("The design says that the roof is %s, but %s has a hip: say which shape holds for wind and drifting snow", roof.shape, hip:called()))
    elseif roof.shape:is("gable") and not ridge then
      review("The design says that the roof is a gable roof, but no plane of it has a ridge")
    elseif roof.shape:is("flat") and ridge then
      review(format("The design says that the roof is flat, but %s has a ridge", ridge:called()))
    elseif is_met then
      review(format("The design says that the roof has one slope (monoslope), but another plane meets the ridge of %s from the other side, as on a gable roof", ridge:called()))
    elseif closed then
      review(format("%s has neither an eave nor a valley, where its water would leave: an outer edge is called a wall or a rake (behind a parapet it is an eave all the same), and wind is strongest along those", closed:called()))
    elseif odd then
      review(format("In plan, %s shares with another plane %s: clearances, pathways and wind follow from what an edge is", odd:called(), odd_says))
    elseif single then
      review(format("%s has neither a ridge nor a hip, as a lean-to or a shed dormer: wind is counted as on a %s roof, and in the corners of a roof of one slope it may lift harder", single:called(), roof.shape))
    elseif bare then
      review(format("%s ends at a wall, and no roof is drawn beyond it: a rake is called a rake, what ends at a parapet an eave all the same, and wind is strongest along those; of a wall that stands higher draw the roof that it carries, too", bare:called()))
    elseif near then
      review(format("%s is told to be of a %s, which stands apart, and in plan lies within a foot of %s, of the house: what is joined to the house is of its roof for access, wind and snow (attached garage, or an open structure with detached: no)", near:called(), near.structure, near_house))
    elseif lone and same(lone_edge, "ridge") then
      review(format("No plane meets the ridge of %s from the other side, where one must face the other way: its azimuth or plan_origin is not as built, a plane is left out of the roof, a wall goes up there (call the edge a wall, as at the top of a lean-to), or the roof has no other slope (call its shape monoslope)", lone:called()))
    elseif lone then
      review(format("No plane meets the %s of %s from the other side: the edge is none but a rake or a wall, the plan_origin of a plane is not as built, or a plane is left out of the roof", lone_edge, lone:called()))
    else
      shall.be("The edges of its planes go with the shape of the roof", true)
    end
  end,
  remedy = "Name the shape of the roof as its planes show it, and give all its planes with azimuth and plan_origin.",
}

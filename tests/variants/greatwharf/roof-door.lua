---@type plumbrule.Rule
return {
  title = "Room at the hinge of a door to the roof",
  cite = "a city's fire code of 2022, 504.4 (secondary source)",
  about = "roof_plane",
  applies = function(plane)
    if plane.modules:count() < 1 then return false end
    for _, thing in ipairs(plane.obstructions) do
      if thing.kind:is("hatch") then return true end
    end
    return false
  end,
  check = function(plane, book)
    shall.be_at_least("Clear width around the door", plane:clearance_to_obstructions("hatch"), book.roof_door_radius, inch)
  end,
  remedy = "Move the modules out of the swing of the door.",
}

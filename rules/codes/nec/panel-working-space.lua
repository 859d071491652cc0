---@type plumbrule.Rule
return {
  title = "Working space before a panel",
  cite = "110.26(A)",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel)
    local space = panel.working_space
    local depth, width, height = space:needed()
    shall.be_at_least("Depth", space.depth, depth)
    shall.be_at_least("Width", space.width, width)
    shall.be_at_least("Height", space.height, height)
    shall.be("Its door opens 90 degrees", space.door_opens_90)
    shall.be("It is kept clear", space.clear_of_storage)
  end,
  remedy = "Move the panel, or clear the space before it.",
}

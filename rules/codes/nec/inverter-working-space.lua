---@type plumbrule.Rule
return {
  title = "Working space before an inverter",
  cite = "110.26(A)",
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter)
    local space = inverter.working_space
    local depth, width, height = space:needed(inverter.model.maximum_dc_voltage)
    shall.be_at_least("Depth", space.depth, depth)
    shall.be_at_least("Width", space.width, width)
    shall.be_at_least("Height", space.height, height)
    shall.be("Its door opens 90 degrees", space.door_opens_90)
    shall.be("It is kept clear", space.clear_of_storage)
  end,
  remedy = "Move the inverter, or clear the space before it.",
}

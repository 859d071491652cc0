---@type plumbrule.Rule
-- A breaker in a panel is reached from the panel's own working space: give the same there. The switch that only
-- sets off rapid shutdown carries a signal, and is left out.
return {
  title = "Working space before a disconnect",
  cite = "110.26(A)",
  about = "disconnect",
  applies = function(disconnect) return not disconnect.role:is("rapid shutdown") end,
  check = function(disconnect, _, design)
    local space, volts = disconnect.working_space, design.service.voltage_to_ground
    -- On the DC side the circuits' own voltage counts, as if one pole were at ground.
    if disconnect.role:is("DC") then volts = largest(volts, disconnect.voltage_rating) end
    local depth, width, height = space:needed(volts)
    shall.be_at_least("Depth", space.depth, depth)
    shall.be_at_least("Width", space.width, width)
    shall.be_at_least("Height", space.height, height)
    shall.be("Its door opens 90 degrees", space.door_opens_90)
    shall.be("It is kept clear", space.clear_of_storage)
  end,
  remedy = "Move the disconnect, or clear the space before it.",
}

---@type plumbrule.Rule
return {
  title = "Rapid shutdown",
  cite = "690.12",
  about = "rapid_shutdown",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(shutdown, book)
    shall.be("The conductors on the building are controlled", not shutdown.method:is("none"))
    shall.not_exceed("Distance outside the array at which they stay live", shutdown.boundary, book.shutdown_boundary)
    shall.not_exceed("Voltage outside the boundary", shutdown.voltage_outside, book.shutdown_voltage_outside)
    if not shutdown.method:is("hazard control system", "non-exposed array") then
      shall.not_exceed("Voltage inside the boundary", shutdown.voltage_inside, book.shutdown_voltage_inside)
    end
    shall.not_exceed("Time to get there", shutdown.time, book.shutdown_time)
    shall.be("The initiator is readily accessible", shutdown.initiator_readily_accessible)
    shall.be("The initiator is outside", shutdown.initiator_location:is("outside wall", "ground"))
    shall.be_at_least("Devices that set it off", shutdown.initiators, 1)
    shall.not_exceed("Devices that set it off", shutdown.initiators, book.shutdown_initiators)
  end,
  remedy = "Use listed module-level devices, converters, microinverters or a hazard control system, with an initiator outside that one can reach.",
}

---@type plumbrule.Rule
return {
  title = "Initiator of rapid shutdown",
  cite = "690.12(C)",
  about = "rapid_shutdown",
  applies = function(shutdown) return not shutdown.method:is("none") end,
  check = function(shutdown, book)
    shall.be("The initiator is readily accessible", shutdown.initiator_readily_accessible)
    shall.be("The initiator is outside", shutdown.initiator_location:is("outside wall", "ground"))
    shall.be_at_least("Devices that set it off", shutdown.initiators, 1)
    shall.not_exceed("Devices that set it off, at the most", shutdown.initiators, book.shutdown_initiators)
    shall.be("The design names what sets it off", not not shutdown.initiator)
    if shutdown.initiator then
      shall.be("It is the service disconnect, the PV disconnect or a switch for it",
        shutdown.initiator.role:is("service", "emergency", "PV system", "rapid shutdown", "utility", "AC"))
      -- The device itself is judged, not only what the design says of it beside.
      shall.be("The device that it names is outside", shutdown.initiator.location:is("outside wall", "ground"))
      shall.be("The device that it names is readily accessible", shutdown.initiator.readily_accessible)
    end
  end,
  remedy = "Put one switch outside where one can reach it, and at most six.",
}

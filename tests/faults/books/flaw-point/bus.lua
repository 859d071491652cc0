---@type plumbrule.Rule
return {
  title = "Rating of the bus",
  cite = "Town Code 1-2",
  about = "busbar",
  check = function(bus)
    shall.meet_one_of {
      { "device alone", function() shall.not_exceed("Protecting device", bus.protecting_device, bus.rating) end },
      { "a larger bus", function() shall.be_at_least("Rating", bus.rating, 225 * A) end },
    }
  end,
}

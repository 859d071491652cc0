return {
  title = "Main and sources against 120 % of the bus",
  cite = "check 2",
  about = "busbar",
  check = function(bus)
    local sum = bus.protecting_device
    for _, breaker in ipairs(bus.breakers) do
      if breaker.duty:is("source", "feeder") then sum = sum + breaker.rating end
    end
    shall.not_exceed("Protecting device and sources", sum, 1.2 * bus.rating)
  end,
}

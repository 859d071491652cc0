---@type plumbrule.Rule
return {
  title = "Meter that counts both ways",
  cite = "Sallow Point sheet 4",
  about = "meter",
  applies = function(meter) return meter.revenue end,
  check = function(meter, _, design)
    shall.be("It counts both ways, or the utility changes it", meter.bidirectional)
    shall.be_at_least("Rating of its socket against the service", meter.rating, design.service.rating)
    shall.be("It is outside", meter.location:is("outside wall", "ground"))
  end,
  remedy = "Ask the utility for a meter change with the application.",
}

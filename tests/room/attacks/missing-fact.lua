-- Tries: a missing fact.
-- Expects: open - 0
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = thing.layers, thing.slope
    shall.be("Steep", thing.age > 1 * year)
  end,
}

-- Tries: a missing fact in applies.
-- Expects: open - 0
return {
  title = "Attack", cite = "Trial", about = "busbar",
  applies = function(bus) return bus.protecting_device > 1 * A end,
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

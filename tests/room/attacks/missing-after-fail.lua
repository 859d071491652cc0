-- Tries: a missing fact after a fail.
-- Expects: fail - 0
return {
  title = "Attack", cite = "Trial", about = "busbar",
  check = function(thing, book, design)
    shall.be("Bad", false)
    local x = thing.protecting_device
  end,
}

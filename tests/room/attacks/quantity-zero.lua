-- Tries: to divide by no volts.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = (5 * A) / (0 * V) -- here
  end,
}

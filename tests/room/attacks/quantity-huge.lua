-- Tries: quantities beyond all numbers.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = 1e300 * A * (1e300 * A) -- here
  end,
}

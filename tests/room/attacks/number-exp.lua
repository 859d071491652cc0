-- Tries: a power beyond all numbers.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    math.exp(1e9) -- here
  end,
}

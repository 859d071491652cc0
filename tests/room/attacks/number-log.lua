-- Tries: the logarithm of nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    math.log10(0) -- here
  end,
}

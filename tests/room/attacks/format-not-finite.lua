-- Tries: numbers that are not finite, written.
-- Expects: review - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    review("Look", 1/0, 0/0, tostring(-1/0), format("%s", 0/0))
  end,
}

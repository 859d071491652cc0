-- Tries: the root of a negative number.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    sqrt(-1) -- here
  end,
}

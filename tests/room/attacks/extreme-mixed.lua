-- Tries: the largest of unlike amounts.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    largest(1 * A, 1) -- here
  end,
}

-- Tries: a thing as a function.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    thing() -- here
  end,
}

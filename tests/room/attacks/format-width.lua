-- Tries: a width.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    format("%99.9f", 1) -- here
  end,
}

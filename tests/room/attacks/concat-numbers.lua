-- Tries: numbers joined.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.concat({1, 2}) -- here
  end,
}

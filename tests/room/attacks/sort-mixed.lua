-- Tries: unlike entries.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.sort({1, "a", {}}) -- here
  end,
}

-- Tries: a comparison that is none.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.sort({1, 2}, "up") -- here
  end,
}

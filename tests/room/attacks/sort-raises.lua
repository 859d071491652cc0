-- Tries: a comparison that throws.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.sort({2, 1}, function(a, b) return a.x < b.x end) -- here
  end,
}

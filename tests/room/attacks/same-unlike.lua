-- Tries: what is never the same.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    same(1, "1") -- here
  end,
}

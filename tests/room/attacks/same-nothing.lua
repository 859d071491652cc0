-- Tries: nothing and nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    same() -- here
  end,
}

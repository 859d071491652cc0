-- Tries: a number of another base.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    tonumber("ff", 16) -- here
  end,
}

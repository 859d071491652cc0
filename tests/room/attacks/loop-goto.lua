-- Tries: to jump back for ever.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    ::again:: goto again -- here
  end,
}

-- Tries: to repeat for ever.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    repeat local x = 1 until false -- here
  end,
}

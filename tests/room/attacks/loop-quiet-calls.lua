-- Tries: to spend time in C only.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    while true do same("a", "a") end -- here
  end,
}

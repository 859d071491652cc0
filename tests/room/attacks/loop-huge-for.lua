-- Tries: a loop with huge bounds.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    for i = 1, 1e18 do end -- here
  end,
}

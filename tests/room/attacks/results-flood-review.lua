-- Tries: to hand over points without end.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    while true do review("Look") end -- here
  end,
}

-- Tries: garbage without end.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    while true do local t = {{}, {}, {}} end -- here
  end,
}

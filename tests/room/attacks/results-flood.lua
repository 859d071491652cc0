-- Tries: to record without end.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    while true do shall.be("Good", true) end -- here
  end,
}

-- Tries: a text that doubles.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s = "x"
    while true do s = s .. s end -- here
  end,
}

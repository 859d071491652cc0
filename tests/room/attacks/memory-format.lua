-- Tries: a text that doubles by format.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s = "x"
    while true do s = format("%s%s", s, s) end -- here
  end,
}

-- Tries: long texts in capitals.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s = "x"
    while true do s = string.upper(s .. s) end -- here
  end,
}

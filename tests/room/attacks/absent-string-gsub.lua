-- Tries: a word that is left out of the room.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s = "aaa"; s:gsub(".", "b") -- here
  end,
}

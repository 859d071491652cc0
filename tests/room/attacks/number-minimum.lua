-- Tries: the least integer as a place.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_equal("Piece", string.sub("text", -9223372036854775807 - 1, 9223372036854775807), "text")
  end,
}

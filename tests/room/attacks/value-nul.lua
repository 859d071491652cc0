-- Tries: a value's name that is right up to a NUL.
-- Expects: open rule-error says a text with a NUL byte in it
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.not_exceed("Current", 1 * A, book["limit_current\0x"]) -- here
  end,
}

-- Tries: a text to format that goes on behind a NUL.
-- Expects: open rule-error says a text with a NUL byte in it
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.be(format("Layers, %d\0 of %d", 1, 2), true) -- here
  end,
}

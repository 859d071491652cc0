-- Tries: a word that is right up to a NUL, behind the right one.
-- Expects: open rule-error says a text with a NUL byte in it
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.be("Exposure", design.site.exposure:is("C"))
    shall.be("Exposure", design.site.exposure:is("C\0")) -- here
  end,
}

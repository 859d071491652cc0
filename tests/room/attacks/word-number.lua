-- Tries: a number where a word is asked for.
-- Expects: open rule-error says '3' is no word for exposure
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.be("Exposure", design.site.exposure:is(3)) -- here
  end,
}

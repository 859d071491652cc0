-- Tries: keys that are no names, behind a name that was found; the first of them raises.
-- Expects: open rule-error says a design has no '?'
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.be("Given", design.site.exposure:is("C"))
    return design[nil] -- here
  end,
}

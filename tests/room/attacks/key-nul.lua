-- Tries: a fact's name with a NUL behind it, after the name itself was found.
-- Expects: open rule-error says a design has no 'site'
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.be("Given", design.site.exposure:is("C"))
    return design["site\0"] -- here
  end,
}

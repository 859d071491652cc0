-- Tries: a word of a set that is right up to a NUL.
-- Expects: open rule-error says a text with a NUL byte in it
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    shall.be("Mounted", design.project.scope:has("roof-mounted PV\0")) -- here
  end,
}

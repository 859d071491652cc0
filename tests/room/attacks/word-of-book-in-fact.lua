-- Tries: a word that a book's value knows, found there first, asked of a fact whose words lack it.
-- Expects: open rule-error says 'A' is no word for exposure
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local exposure, least = design.site.exposure, book.least_exposure
    shall.be("Both", least:is("C") and exposure:is("C") and least:is("C") and not least:is("A"))
    return exposure:is("A") -- here
  end,
}

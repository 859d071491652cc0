-- Tries: words with the same letters of a fact and of a book's value, one behind the other.
-- Expects: pass -
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local exposure, is = design.site.exposure, book.least_exposure.is
    for _, word in ipairs { "B", "C", "D", "C", "B" } do
      shall.be("As it is", same(exposure:is(word), book.least_exposure:is(word)))
      shall.be("Whosever method", same(is(exposure, word), exposure:is(word)))
    end
    shall.be("Another", not book.least_exposure:is("A"))
    shall.be("The same", same(exposure, book.least_exposure))
  end,
}

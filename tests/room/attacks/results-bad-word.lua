-- Tries: a word to compare that is no UTF-8.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_equal("Word", "\xff", "b") -- here
  end,
}

-- Tries: a title that is no UTF-8.
-- Expects: open rule-card
return {
  title = "\xc3", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

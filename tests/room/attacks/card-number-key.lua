-- Tries: a card with a list on it.
-- Expects: open rule-card
return {
  title = "Attack", cite = "Trial", about = "design",
  1, 2, 3,
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

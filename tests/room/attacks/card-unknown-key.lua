-- Tries: a card with more on it.
-- Expects: open rule-card
return {
  title = "Attack", cite = "Trial", about = "design",
  answer = 42,
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

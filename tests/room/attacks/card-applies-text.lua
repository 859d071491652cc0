-- Tries: an applies that is a text.
-- Expects: open rule-card
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = "always",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

-- Tries: a title that is a number.
-- Expects: open rule-card
return {
  title = 42, cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

-- Tries: an empty title.
-- Expects: open rule-card
return {
  title = "", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

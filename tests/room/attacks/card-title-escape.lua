-- Tries: a title that commands the terminal.
-- Expects: open rule-card
return {
  title = "\27[2J", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

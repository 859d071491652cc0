-- Tries: a sentence that commands the terminal.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("\27[31mGood", true) -- here
  end,
}

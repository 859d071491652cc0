-- Tries: to write what all rules share.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    thing.answer = 1 -- here
  end,
}

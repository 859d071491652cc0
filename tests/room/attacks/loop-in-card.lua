-- Tries: to run for ever before there is a card.
-- Expects: open rule-budget
while true do end -- here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

-- Tries: to judge before there is anything to judge.
-- Expects: open rule-card
should.be("Early", true) -- here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

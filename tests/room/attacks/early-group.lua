-- Tries: to judge before there is anything to judge.
-- Expects: open rule-card
shall.meet_one_of { {"a", function() end}, {"b", function() end} } -- here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

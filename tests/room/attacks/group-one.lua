-- Tries: a group of one.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"a", function() shall.be("Good", true) end} } -- here
  end,
}

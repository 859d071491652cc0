-- Tries: should inside a group.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"a", function() should.be("Good", true) end}, {"b", function() shall.be("Good", true) end} } -- here
  end,
}

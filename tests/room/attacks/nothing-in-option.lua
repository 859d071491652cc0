-- Tries: an option that says nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"good", function() shall.be("Good", true) end}, {"empty", function() end} } -- here
  end,
}

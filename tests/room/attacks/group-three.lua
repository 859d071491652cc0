-- Tries: an option with two functions.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"a", function() end, function() end}, {"b", function() shall.be("Good", true) end} } -- here
  end,
}

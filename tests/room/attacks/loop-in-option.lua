-- Tries: to run for ever in an option while the other passes.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"good", function() shall.be("Good", true) end},
      {"loops", function() while true do end end} } -- here
  end,
}

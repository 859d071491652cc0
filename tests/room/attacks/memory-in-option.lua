-- Tries: a memory error in an option while the other passes.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"good", function() shall.be("Good", true) end},
      {"eats", function() local s = "x" while true do s = s .. s end end} } -- here
  end,
}

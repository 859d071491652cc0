-- Tries: to run for ever in an option of an option.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"good", function() shall.be("Good", true) end}, {"nests", function()
      shall.meet_one_of { {"good", function() shall.be("Good", true) end},
        {"loops", function() while true do end end} } -- here
    end} }
  end,
}

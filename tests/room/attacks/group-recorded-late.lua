-- Tries: to change a group after it was judged.
-- Expects: fail - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local options = { {"a", function() shall.be("Bad", false) end}, {"b", function() shall.be("Bad", false) end} }
    shall.meet_one_of(options)
    options[1][2] = function() shall.be("Good", true) end
  end,
}

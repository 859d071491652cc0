-- Tries: a group of twenty-one.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local options = {}
    for i = 1, 21 do options[i] = {"a", function() shall.be("Good", true) end} end
    shall.meet_one_of(options) -- here
  end,
}

-- Tries: to run for ever in applies.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = function() while true do end end, -- here
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

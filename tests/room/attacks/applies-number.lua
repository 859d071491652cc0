-- Tries: an applies that answers with a number.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = function() return 1 end, -- here
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

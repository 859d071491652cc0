-- Tries: an applies that answers nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = function() end, -- here
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

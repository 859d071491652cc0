-- Tries: an applies that says no.
-- Expects: notApplicable - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = function() return false end,
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

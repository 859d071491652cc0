-- Tries: about a thing that does not exist.
-- Expects: open rule-card says did you mean
return {
  title = "Attack", cite = "Trial", about = "roof_plan",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

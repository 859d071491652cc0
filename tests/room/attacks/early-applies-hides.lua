-- Tries: to hide a fail by recording it in applies.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = function() shall.be("Early", false) return false end, -- here
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

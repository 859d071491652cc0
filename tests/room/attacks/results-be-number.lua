-- Tries: a number as yes.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("x", 1) -- here
  end,
}

-- Tries: no world at all.
-- Expects: open rule-error
_ENV = nil
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true) -- here
  end,
}

-- Tries: a world of its own, without words.
-- Expects: open rule-error
_ENV = {}
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true) -- here
  end,
}

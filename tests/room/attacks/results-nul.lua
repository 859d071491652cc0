-- Tries: a sentence with a NUL in it.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("a\0b", true) -- here
  end,
}

-- Tries: a sentence with a C1 control character.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("a\u{9b}b", true) -- here
  end,
}

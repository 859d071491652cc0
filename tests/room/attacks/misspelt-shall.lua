-- Tries: a word of shall misspelt.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.not_exceeds("x", 1, 2) -- here
  end,
}

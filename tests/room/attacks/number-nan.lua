-- Tries: nan in a comparison.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.not_exceed("Nan", 0/0, 1) -- here
  end,
}

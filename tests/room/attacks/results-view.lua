-- Tries: a thing as an amount.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.not_exceed("x", thing, 1) -- here
  end,
}

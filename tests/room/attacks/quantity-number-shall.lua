-- Tries: a quantity against a number in shall.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.not_exceed("Current", 5 * A, 6) -- here
  end,
}

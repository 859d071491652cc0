-- Tries: a unit that does not fit what is shown.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.not_exceed("Current", 1 * A, 2 * A, V) -- here
  end,
}

-- Tries: a quantity against a number.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = 5 * A < 6 -- here
  end,
}

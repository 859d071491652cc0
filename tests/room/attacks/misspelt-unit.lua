-- Tries: a unit that does not exist.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = 5 * inches -- here
  end,
}

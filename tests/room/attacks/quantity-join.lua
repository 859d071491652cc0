-- Tries: a quantity joined to a text.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = "is " .. 5 * A -- here
  end,
}

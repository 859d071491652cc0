-- Tries: to divide a quantity by nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = (5 * A) / 0 -- here
  end,
}

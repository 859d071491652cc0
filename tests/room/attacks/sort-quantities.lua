-- Tries: amperes among volts in a sort.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.sort({1 * A, 1 * V}) -- here
  end,
}

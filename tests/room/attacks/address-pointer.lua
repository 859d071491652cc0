-- Tries: the address by format.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    format("%p", {}) -- here
  end,
}

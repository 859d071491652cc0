-- Tries: a value without a number.
-- Expects: open - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = book.not_yet
  end,
}

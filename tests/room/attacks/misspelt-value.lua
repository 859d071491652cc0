-- Tries: a value misspelt.
-- Expects: open rule-error says did you mean 'limit_current'?
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = book.limit_curent -- here
  end,
}

-- Tries: to write what all rules share, past the lock.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.concat(table) -- here
  end,
}

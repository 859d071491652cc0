-- Tries: to insert into a number.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.insert(1, 2) -- here
  end,
}

-- Tries: a huge place in a selection.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    select(-9, 1, 2) -- here
  end,
}

-- Tries: to run for ever inside a sort.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.sort({2, 1}, function() while true do end end) -- here
  end,
}

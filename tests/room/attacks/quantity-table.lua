-- Tries: a quantity times a table.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = {} * A -- here
  end,
}

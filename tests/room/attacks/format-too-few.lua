-- Tries: more places than values.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    format("%s") -- here
  end,
}

-- Tries: a calculator misspelt.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "busbar",
  check = function(thing, book, design)
    thing:source_curent() -- here
  end,
}

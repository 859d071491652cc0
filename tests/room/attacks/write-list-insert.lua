-- Tries: to add to a list of the design.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.insert(design.meters, thing) -- here
  end,
}

-- Tries: a thing as a place in a list.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = design.panels[thing] -- here
  end,
}

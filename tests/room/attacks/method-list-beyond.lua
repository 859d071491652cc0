-- Tries: a place beyond the list.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = design.panels[1e15].name -- here
  end,
}

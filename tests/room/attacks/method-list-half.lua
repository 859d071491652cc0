-- Tries: half an entry of a list.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = design.panels["1.5"] -- here
  end,
}

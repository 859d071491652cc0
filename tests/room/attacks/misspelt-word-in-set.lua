-- Tries: a word the set cannot have.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    design.panels[1].busbars[1].methods:has("magic") -- here
  end,
}

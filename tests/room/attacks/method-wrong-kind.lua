-- Tries: a method on a thing of another kind.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "panel",
  check = function(thing, book, design)
    local f = thing.busbars[1].source_current
    f(design) -- here
  end,
}

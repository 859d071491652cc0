-- Tries: a variable that runs code when it is left.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x <close> = design -- here
  end,
}

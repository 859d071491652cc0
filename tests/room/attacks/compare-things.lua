-- Tries: a thing below a thing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = thing < design -- here
  end,
}

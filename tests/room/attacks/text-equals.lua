-- Tries: to compare in Lua's own way.
-- Expects: open rule-equals
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    if 1 == 2 then end -- here
  end,
}

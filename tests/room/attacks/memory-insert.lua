-- Tries: table.insert without end.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    while true do table.insert(t, 1) end -- here
  end,
}

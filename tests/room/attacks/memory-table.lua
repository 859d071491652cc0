-- Tries: a table that grows for ever.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    for i = 1, 1e9 do t[i] = i end -- here
  end,
}

-- Tries: more values than the stack holds, out of a table.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    for i = 1, 9000 do t[i] = i end
    select("#", table.unpack(t)) -- here
  end,
}

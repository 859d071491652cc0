-- Tries: a text joined of long ones.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s, t = "x", {}
    for i = 1, 14 do s = s .. s end
    for i = 1, 1000 do t[i] = s end
    local n = string.len(table.concat(t)) -- here
  end,
}

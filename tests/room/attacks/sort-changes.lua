-- Tries: a comparison that changes the list.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {3, 2, 1}
    table.sort(t, function(a, b) t[1] = nil; t[2] = nil; t[3] = nil; t[9] = 1 return a < b end)
    shall.be_equal("First", t[1], 1)
  end,
}

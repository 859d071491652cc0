-- Tries: a comparison that always says yes.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    for i = 1, 100 do t[i] = i end
    table.sort(t, function() return true end)
    local sum = 0
    for _, x in ipairs(t) do sum = sum + x end
    shall.be_equal("Sum", sum, 5050)
  end,
}

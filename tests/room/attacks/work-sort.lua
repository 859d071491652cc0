-- Tries: long lists sorted again and again.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    for i = 1, 9000 do t[i] = (i * 7919) % 9001 end
    while true do table.sort(t) end -- here
  end,
}

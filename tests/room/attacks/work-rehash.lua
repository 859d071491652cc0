-- Tries: a full table made anew with every entry.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    for i = 1, 4096 do t["k" .. tostring(i)] = 1 end
    local i = 0
    while true do i = i + 1; t["k" .. tostring(i)] = nil; t["k" .. tostring(i + 4096)] = 1 end -- here
  end,
}

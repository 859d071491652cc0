-- Tries: long texts searched again and again.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local a = "xxxxxxxxxxxxxxxx"
    for i = 1, 10 do a = a .. a end
    while true do string.contains(a, "xxxxxxxxy") end -- here
  end,
}

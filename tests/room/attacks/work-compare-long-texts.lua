-- Tries: two long texts compared again and again.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local a = "xxxxxxxxxxxxxxxx"
    for i = 1, 10 do a = a .. a end
    local b = a .. "z"
    while a <= b do end -- here
  end,
}

-- Tries: ever higher dimensions.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = 1 * m
    for i = 1, 1000 do x = x * (1 * m) end -- here
  end,
}

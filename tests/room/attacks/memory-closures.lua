-- Tries: ever more functions.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local f = function() end
    while true do local g = f; f = function() return g end end -- here
  end,
}

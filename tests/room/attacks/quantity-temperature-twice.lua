-- Tries: twice a temperature.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = 2 * celsius(20) -- here
  end,
}

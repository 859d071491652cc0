-- Tries: a temperature plus a temperature.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = celsius(20) + celsius(20) -- here
  end,
}

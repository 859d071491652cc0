-- Tries: to divide an integer by nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = 1 // 0 -- here
  end,
}

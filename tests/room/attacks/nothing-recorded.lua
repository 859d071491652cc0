-- Tries: to pass by saying nothing.
-- Expects: open rule-error
return {
  title = "x", cite = "y", about = "design",
  check = function() -- here
    local x = 1
  end,
}

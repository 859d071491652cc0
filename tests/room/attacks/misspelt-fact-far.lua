-- Tries: a fact that nothing is near.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = thing.qqqqqqqq -- here
  end,
}

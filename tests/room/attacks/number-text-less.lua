-- Tries: a text against a number.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = "10" < 5 -- here
  end,
}

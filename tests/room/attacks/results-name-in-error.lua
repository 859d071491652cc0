-- Tries: control characters in the name of what is not there.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = shall["\27[31m\xff"] -- here
  end,
}

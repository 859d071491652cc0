-- Tries: to throw after it passed.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = {} + 1 -- here
  end,
}

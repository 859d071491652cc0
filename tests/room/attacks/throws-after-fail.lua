-- Tries: to throw after it failed: the fail is never hidden.
-- Expects: fail rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Bad", false)
    local x = {} + 1 -- here
  end,
}

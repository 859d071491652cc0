-- Tries: to call what is not there.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local f = nil
    f() -- here
  end,
}

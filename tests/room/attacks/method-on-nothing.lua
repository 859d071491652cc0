-- Tries: a method on nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local f = thing.called
    f() -- here
  end,
}

-- Tries: nan as a limit.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.not_exceed("Nan", 1, -(0/0)) -- here
  end,
}

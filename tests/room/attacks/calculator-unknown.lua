-- Tries: an input that it does not have.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    calc.ampacity { answer = 42 } -- here
  end,
}

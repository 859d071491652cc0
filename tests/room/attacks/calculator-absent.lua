-- Tries: a calculator that does not exist.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    calc.answer() -- here
  end,
}

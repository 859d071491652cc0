-- Tries: nan as an input.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    calc.ocpd_up { current = 0/0 } -- here
  end,
}

-- Tries: a library as inputs.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    calc.ocpd_up(math) -- here
  end,
}

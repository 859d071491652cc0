-- Tries: a table as an input.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    calc.ocpd_up({}, {}) -- here
  end,
}

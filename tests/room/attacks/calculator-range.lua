-- Tries: an input out of its range.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    calc.ocpd_up(1e9 * A) -- here
  end,
}

-- Tries: an input of the wrong kind.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    calc.ocpd_up("much") -- here
  end,
}

-- Tries: a method on a number.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local f = design.site.exposure.is
    f(5, "C") -- here
  end,
}

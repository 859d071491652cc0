-- Tries: a method on a quantity.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local f = design.meters.count
    f(5 * A) -- here
  end,
}

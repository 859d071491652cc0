-- Tries: a missing fact inside a sort.
-- Expects: open - 0
return {
  title = "Attack", cite = "Trial", about = "busbar",
  check = function(thing, book, design)
    table.sort({thing, thing}, function(a, b) return a.protecting_device < b.protecting_device end)
  end,
}

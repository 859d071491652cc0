-- Tries: a list with holes.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    table.concat({"a", {}, "b"}) -- here
  end,
}

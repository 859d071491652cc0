-- Tries: a format that breaks off.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    format("50 %", 1) -- here
  end,
}

-- Tries: arguments in the wrong order.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.not_exceed(1, 2, "what") -- here
  end,
}

-- Tries: options turned round.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {function() end, "a"}, {function() end, "b"} } -- here
  end,
}

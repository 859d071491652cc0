-- Tries: an integer that wraps round, as Lua has it; it misleads nobody but its author.
-- Expects: fail - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_more_than("Sum", 9223372036854775807 + 1, 0)
  end,
}

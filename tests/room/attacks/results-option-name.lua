-- Tries: the name of an option that commands the terminal.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { {"\27[0m", function() end}, {"b", function() end} } -- here
  end,
}

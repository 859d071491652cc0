-- Tries: options without names.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of { function() end, function() end } -- here
  end,
}

-- Tries: no group at all.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of(nil) -- here
  end,
}

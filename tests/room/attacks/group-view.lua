-- Tries: a list of the design as a group.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.meet_one_of(design.meters) -- here
  end,
}

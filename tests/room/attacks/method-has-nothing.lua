-- Tries: has() without a word.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "busbar",
  check = function(thing, book, design)
    thing.methods:has() -- here
  end,
}

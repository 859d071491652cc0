-- Tries: nan as the same.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Same", same(0/0, 0/0)) -- here
  end,
}

-- Tries: below the coldest.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_at_least("T", celsius(-500), celsius(0)) -- here
  end,
}

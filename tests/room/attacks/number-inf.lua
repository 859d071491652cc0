-- Tries: inf in a comparison.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_at_least("Inf", 1/0, 1) -- here
  end,
}

-- Tries: more values than a review shows.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    review("Look", 1, 2, 3, 4, 5, 6, 7, 8, 9) -- here
  end,
}

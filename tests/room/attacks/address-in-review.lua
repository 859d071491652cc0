-- Tries: addresses in a point to review.
-- Expects: review - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    review("Look", function() end, {}, design, nil, book, design.meters)
  end,
}

-- Tries: locals of a file, from one thing to the next within one review.
-- Expects: pass - 0
local count = 0
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    count = count + 1
    shall.not_exceed("Things seen", count, 2)
  end,
}

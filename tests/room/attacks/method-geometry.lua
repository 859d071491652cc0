-- Tries: corners as numbers.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local x = thing.outline -- here
  end,
}

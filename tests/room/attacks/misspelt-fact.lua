-- Tries: a fact misspelt.
-- Expects: open rule-error says did you mean 'slope'?
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local x = thing.slop -- here
  end,
}

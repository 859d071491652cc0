-- Tries: the step of a walk over a list, taken over a thing that is none.
-- Expects: open rule-error says this walks over a list, from a number
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local step = ipairs(design.roof.planes)
    step(thing, 0) -- here
  end,
}

-- Tries: the step of a walk over a list from half a number.
-- Expects: open rule-error says this walks over a list, from a number
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local step, planes = ipairs(design.roof.planes)
    step(planes, 0.5) -- here
  end,
}

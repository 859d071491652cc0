-- Tries: the step of a walk over a list from numbers far outside it.
-- Expects: pass -
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local step, planes = ipairs(design.roof.planes)
    for i in step, planes, -9223372036854775807 do shall.be("Never", false) end
    for i in step, planes, 9223372036854775807 do shall.be("Never", false) end
    local second = step(planes, 1.0)
    shall.be("The second", same(second, 2))
  end,
}

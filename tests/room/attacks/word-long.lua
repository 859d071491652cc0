-- Tries: words too long to be held once by Lua, made anew each time: the same text, another place.
-- Expects: open rule-error says 'CCCC
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local word = "C"
    shall.be("Exposure", design.site.exposure:is(word))
    for i = 1, 6 do word = word .. word end
    return design.site.exposure:is(word) -- here
  end,
}

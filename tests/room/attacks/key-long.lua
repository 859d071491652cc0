-- Tries: names too long to be held once by Lua, made anew each time, around a name that is there.
-- Expects: open rule-error says a design has no 'sitesite
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local name = "site"
    shall.be("Given", design[name].exposure:is("C"))
    for i = 1, 5 do name = name .. name end
    return design[name] -- here
  end,
}

-- Tries: a variable to be closed that is nil, which Lua allows.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x <close> = nil
    shall.be("Good", true)
  end,
}

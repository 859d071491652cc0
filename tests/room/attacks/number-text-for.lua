-- Tries: a text as a bound, which Lua takes for a number.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local n = 0
    for i = "1", 2 do n = n + i end
    shall.be_equal("Sum", n, 3)
  end,
}

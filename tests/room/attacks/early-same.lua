-- Tries: to compare before there is anything to judge, which harms nobody.
-- Expects: pass - 0
local early = same("a", "a")
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Same", early)
  end,
}

-- Tries: a title without end.
-- Expects: open rule-card
local s = "x"
for i = 1, 11 do s = s .. s end
return {
  title = s, cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

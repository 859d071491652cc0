-- Tries: a text of digits alone, each followed by the empty unit: every one begins where the first does.
-- Expects: open rule-budget says the rule ran past its budget
local digits = "1"
for i = 1, 14 do digits = digits .. digits end
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local least = string.numbers_before(digits, "") -- here
    shall.be("Read", same(least, 1))
  end,
}

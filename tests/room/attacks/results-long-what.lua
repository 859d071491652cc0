-- Tries: a sentence without end.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s = "x"
    for i = 1, 9 do s = s .. s end
    shall.be(s, true) -- here
  end,
}

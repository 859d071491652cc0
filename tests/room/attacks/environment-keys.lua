-- Tries: the words counted by ipairs.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local n = 0
    for i in ipairs({}) do n = n + 1 end
    shall.be_equal("Words", n, 0)
  end,
}

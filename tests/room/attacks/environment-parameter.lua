-- Tries: a world handed in.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local f = function(_ENV) answer = 1 return answer end
    shall.be_equal("Answer", f({}), 1)
  end,
}

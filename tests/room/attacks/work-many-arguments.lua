-- Tries: ever more arguments handed on.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local function f(...) return f(1, 2, 3, 4, 5, 6, 7, 8, ...) end -- here
    f()
  end,
}

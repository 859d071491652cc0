-- Tries: to call itself without end.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local function f(n) return 1 + f(n + 1) end -- here
    f(1)
  end,
}

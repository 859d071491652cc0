-- Tries: to call itself for ever without stack.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local function f() return f() end -- here
    f()
  end,
}

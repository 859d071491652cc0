-- Tries: loops in functions in functions.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local function a() while true do end end -- here
    local function b() a() end
    b()
  end,
}

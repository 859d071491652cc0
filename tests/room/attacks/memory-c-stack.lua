-- Tries: functions in functions through sort.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local function f() table.sort({2, 1}, f) end
    f()
  end,
}

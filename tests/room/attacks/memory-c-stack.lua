-- Tries: functions in functions through sort.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design) -- here: not to the line, so the check is named
    local function f() table.sort({2, 1}, f) end
    f()
  end,
}

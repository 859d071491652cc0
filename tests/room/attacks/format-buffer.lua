-- Tries: what lies behind the values.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s = "x"
    for i = 1, 12 do s = s .. s end
    format(s .. "%s") -- here
  end,
}

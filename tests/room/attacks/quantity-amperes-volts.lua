-- Tries: amperes plus volts.
-- Expects: open rule-error says current
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = 5 * A + 5 * V -- here
  end,
}

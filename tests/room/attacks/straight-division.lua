-- Tries: a division by zero in straight code, where the line must be right all the same.
-- Expects: open rule-error says attempt to perform 'n%0'
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local zero, one = string.len(""), 1
    shall.be("Before", true)
    local rest = one % zero -- here
    shall.be("Come to", same(rest, 0))
  end,
}

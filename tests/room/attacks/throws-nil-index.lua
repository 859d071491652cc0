-- Tries: to look into nothing.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local f = nil
    local x = f.x -- here
  end,
}

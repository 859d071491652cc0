-- Tries: the world inside the world.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = _ENV._ENV -- here
  end,
}

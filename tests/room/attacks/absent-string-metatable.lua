-- Tries: the metatable of texts.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local m = getmetatable("") -- here
  end,
}

-- Tries: numbers in other ways of writing.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("None", not tonumber("0x10") and not tonumber("inf") and not tonumber("nan") and not tonumber("1e999"))
  end,
}

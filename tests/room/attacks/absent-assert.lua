-- Tries: assert, which does not exist here.
-- Expects: open rule-error says there is no 'assert' here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = assert -- here
  end,
}

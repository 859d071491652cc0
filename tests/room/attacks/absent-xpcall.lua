-- Tries: xpcall, which does not exist here.
-- Expects: open rule-error says there is no 'xpcall' here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = xpcall -- here
  end,
}

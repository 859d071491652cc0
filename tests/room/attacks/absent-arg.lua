-- Tries: arg, which does not exist here.
-- Expects: open rule-error says there is no 'arg' here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = arg -- here
  end,
}

-- Tries: rawget, which does not exist here.
-- Expects: open rule-error says there is no 'rawget' here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = rawget -- here
  end,
}

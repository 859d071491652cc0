-- Tries: utf8, which does not exist here.
-- Expects: open rule-error says there is no 'utf8' here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = utf8 -- here
  end,
}

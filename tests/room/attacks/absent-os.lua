-- Tries: os, which does not exist here.
-- Expects: open rule-error says there is no 'os' here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = os -- here
  end,
}

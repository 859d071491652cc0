-- Tries: _G, which does not exist here.
-- Expects: open rule-error says there is no '_G' here
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
    local x = _G -- here
  end,
}

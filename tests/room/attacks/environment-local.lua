-- Tries: a world of its own in one function.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local _ENV = {shall = shall}
    shall.be("Good", true)
    local x = math -- nil here
    x.floor(1) -- here
  end,
}

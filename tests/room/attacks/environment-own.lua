-- Tries: a world of its own that answers as it likes.
-- Expects: fail - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local real = shall
    local _ENV = {shall = {be = function() end}}
    shall.be("Hidden", false)
    real.be("Told", false)
  end,
}

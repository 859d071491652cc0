-- Tries: to record in applies and nothing in check.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = function() shall.be("Early", true) return true end, -- here
  check = function(thing, book, design)
    local x = 1
  end,
}

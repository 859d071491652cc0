-- Tries: endless memory in applies.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  applies = function() local s = "x" while true do s = s .. s end end, -- here
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}

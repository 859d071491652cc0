-- Tries: a walk that never ends by a word of ours as its step.
-- Expects: open rule-budget says the rule ran past its budget
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    for text in tostring, 1 do end -- here
    shall.be("Come to", true)
  end,
}

-- Tries: options that change while they run.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local options
    options = { {"a", function() shall.be("Good", true) options[2] = nil end}, {"b", function() shall.be("Good", true) end} }
    shall.meet_one_of(options) -- here
  end,
}

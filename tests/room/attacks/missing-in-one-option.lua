-- Tries: a missing fact in one option while the other passes.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "busbar",
  check = function(thing, book, design)
    shall.meet_one_of { {"good", function() shall.be("Good", true) end}, {"misses", function() shall.be("Age", thing.protecting_device > 1 * A) end} }
  end,
}

-- Tries: a missing fact beside an option that fails.
-- Expects: open - 0
return {
  title = "Attack", cite = "Trial", about = "busbar",
  check = function(thing, book, design)
    shall.meet_one_of { {"a", function() local x = thing.protecting_device end}, {"b", function() shall.be("Bad", false) end} }
  end,
}

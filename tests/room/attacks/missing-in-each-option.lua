-- Tries: a missing fact in each option.
-- Expects: open - 0
return {
  title = "Attack", cite = "Trial", about = "busbar",
  check = function(thing, book, design)
    shall.meet_one_of { {"a", function() local x = thing.protecting_device end}, {"b", function() local x = thing.power_control_limit end} }
  end,
}

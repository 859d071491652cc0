-- Tries: to swallow its limit in ever new options.
-- Expects: open rule-budget
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    while true do shall.meet_one_of { {"a", function() for i = 1, 1e9 do end end}, {"b", function() end} } end -- here
  end,
}

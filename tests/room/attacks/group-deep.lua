-- Tries: groups in groups, twenty deep.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local function nest(n)
      if n < 1 then return shall.be("Good", true) end
      shall.meet_one_of { {"in", function() nest(n - 1) end}, {"out", function() shall.be("Good", true) end} } -- here
    end
    nest(20)
  end,
}

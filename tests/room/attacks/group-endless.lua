-- Tries: groups in groups without end.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local function nest() shall.meet_one_of { {"in", nest}, {"out", nest} } end -- here
    nest()
  end,
}

-- Tries: the address of a table that holds itself.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    t[1] = t
    t.t = t
    shall.be_equal("Table", tostring(t) .. format("%s", t), "tabletable")
  end,
}

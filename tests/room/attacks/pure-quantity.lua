-- Tries: volts by volts is a number.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_equal("Ratio", (10 * V) / (5 * V), 2)
  end,
}

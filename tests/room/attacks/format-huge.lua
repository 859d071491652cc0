-- Tries: the largest number with all decimals.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_equal("Length", string.len(format("%.9f", 1.7976931348623157e308)), 319)
  end,
}

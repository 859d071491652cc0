-- Tries: a slip of the pen.
-- Expects: open rule-syntax
return {
  title = "x" cite = "y", -- here
}

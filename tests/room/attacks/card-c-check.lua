-- Tries: a check that is one of our own functions.
-- Expects: open rule-error
return { title = "x", cite = "y", about = "design", check = shall.be }

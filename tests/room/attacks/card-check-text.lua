-- Tries: a check that is a text.
-- Expects: open rule-card
return { title = "x", cite = "y", about = "design", check = "ok" }

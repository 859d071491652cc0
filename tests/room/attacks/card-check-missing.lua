-- Tries: a card without check.
-- Expects: open rule-card
return { title = "x", cite = "y", about = "design" }

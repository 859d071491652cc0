-- Tries: a text as a card.
-- Expects: open rule-card
return "x"

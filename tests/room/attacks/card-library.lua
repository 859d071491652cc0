-- Tries: a library as a card.
-- Expects: open rule-card
return math

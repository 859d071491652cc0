-- Tries: all words as a card.
-- Expects: open rule-card
return _ENV

-- Tries: a file that throws.
-- Expects: open rule-card
local x = nil + 1 -- here

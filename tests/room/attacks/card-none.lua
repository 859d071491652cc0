-- Tries: a file that gives nothing back.
-- Expects: open rule-card
local x = 1

-- Tries: a text that does not end.
-- Expects: open rule-syntax
local x = "abc -- here

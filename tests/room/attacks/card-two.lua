-- Tries: two cards.
-- Expects: pass - 0
local card = { title = "x", cite = "y", about = "design", check = function() shall.be("Good", true) end }
return card, card

-- Tries: a function that calls itself by its local, without a loop.
-- Expects: open rule-budget says the rule ran past its budget
local check
check = function() return check() end -- here
return { title = "Attack", cite = "Trial", about = "roof_plane", check = check }

-- Tries: an applies that is one of our own functions.
-- Expects: open rule-error
return { title = "x", cite = "y", about = "design", applies = tostring, check = function() end }

-- Tries: ever more long texts.
-- Expects: open rule-memory
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local s, t = "x", {}
    for i = 1, 14 do s = s .. s end
    while true do t = {t, s .. tostring(1)} end -- here
  end,
}

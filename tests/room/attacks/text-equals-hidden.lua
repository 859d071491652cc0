-- Tries: equals in texts and comments only.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    -- a == b
    --[[ a ~= b ]] --[==[ a == b ]==]
    local x = "==" .. '~=' .. [[==]] .. [=[~=]=] .. "\"==" .. "\\"
    local y = 1 <= 2
    shall.be("Good", true)
  end,
}

-- Tries: the address of a function.
-- Expects: pass - 0
local function print_it() end
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_equal("Function", tostring(shall.be) .. tostring(print_it) .. format("%s", function() end), "functionfunctionfunction")
  end,
}

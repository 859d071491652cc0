-- Types for outdoors of Table 110.28, published by a trade page.
local function is_for_outdoors(thing)
  local type = thing.enclosure_type
  shall.be(format("Its enclosure of type %s is one for outdoors", type), type:is("3", "3R", "3S", "3X", "3RX", "3SX", "4", "4X", "6", "6P"))
end

---@type plumbrule.Rule
-- From memory. Fuses of PV circuits need not be in ready reach, so a roof or an attic will do (690.9(C)).
return {
  title = "Place of a combiner",
  cite = "690.4(E), 690.9(C), 240.24(D), (E), (F), 110.28",
  about = "combiner",
  check = function(combiner)
    shall.be("Not in a bathroom", not combiner.location:is("bathroom"))
    shall.be("Not in a clothes closet", not combiner.location:is("clothes closet"))
    shall.be("Not over the steps of a stairway", not combiner.location:is("stairway"))
    if combiner.location:is("outside wall", "roof", "ground") then is_for_outdoors(combiner) end
  end,
  remedy = "Move the combiner; outdoors use an enclosure made for it, such as type 3R or 4X.",
}

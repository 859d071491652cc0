-- Its listing has it marked as other enclosures are (from memory). Types for outdoors of Table 110.28, published by a trade page.
local function is_for_outdoors(thing)
  local type = thing.enclosure_type
  shall.be(format("Its enclosure of type %s is one for outdoors", type), type:is("3", "3R", "3S", "3X", "3RX", "3SX", "4", "4X", "6", "6P"))
end

---@type plumbrule.Rule
-- From memory: 690.4(E), and that (F) (2017: 705.70) lets it hang out of reach on roofs and elsewhere outside; how it
-- is then isolated is a rule of its own.
return {
  title = "Place of an inverter",
  cite = { ["2017"] = "690.4(E), 705.70, 240.24(D), 110.3(B), 110.28", ["2020"] = "690.4(E), (F), 240.24(D), 110.3(B), 110.28", ["2023"] = "690.4(E), (F), 240.24(D), 110.3(B), 110.28" },
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter)
    shall.be("Not in a bathroom", not inverter.location:is("bathroom"))
    shall.be("Not in a clothes closet", not inverter.location:is("clothes closet"))
    if inverter.location:is("attic", "crawl space") then
      review("The code lets an inverter hang out of reach on roofs and outside, and does not name such a place indoors: the authority decides, with the way to it, its working space and the heat that the maker allows")
    end
    if inverter.location:is("outside wall", "roof", "ground") and not inverter.status:is("existing") then is_for_outdoors(inverter.model) end
  end,
  remedy = "Hang the inverter elsewhere; outdoors use one whose enclosure is made for it.",
}

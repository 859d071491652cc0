-- Types for outdoors of Table 110.28, published by a trade page.
local function is_for_outdoors(thing)
  local type = thing.enclosure_type
  shall.be(format("Its enclosure of type %s is one for outdoors", type), type:is("3", "3R", "3S", "3X", "3RX", "3SX", "4", "4X", "6", "6P"))
end

---@type plumbrule.Rule
-- 240.24(F) from memory; reach and height published by trade pages.
return {
  title = "Place of a panel",
  cite = "240.24(A), (D), (E), (F), 404.8(A), 110.28",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel, book)
    shall.be("Not in a bathroom", not panel.location:is("bathroom"))
    shall.be("Not in a clothes closet", not panel.location:is("clothes closet"))
    shall.be("Not over the steps of a stairway", not panel.location:is("stairway"))
    shall.be("Its breakers are readily accessible", panel.readily_accessible)
    shall.not_exceed("Height of its highest breaker's grip", panel.handle_height, book.handle_height)
    -- In reach is without a ladder, and without a hatch.
    if panel.location:is("attic", "crawl space", "roof") and panel.readily_accessible then
      review("Its breakers are told to be in ready reach in such a place: the inspector looks whether stairs and a door lead there, not a ladder or a hatch")
    end
    if panel.location:is("outside wall", "roof", "ground") and not panel.status:is("existing") then is_for_outdoors(panel) end
  end,
  remedy = "Move the panel to where one reaches its breakers from the floor; outdoors use an enclosure made for it, such as type 3R.",
}

-- Types for outdoors of Table 110.28, published by a trade page.
local function is_for_outdoors(thing)
  local type = thing.enclosure_type
  shall.be(format("Its enclosure of type %s is one for outdoors", type), type:is("3", "3R", "3S", "3X", "3RX", "3SX", "4", "4X", "6", "6P"))
end

-- In reach is without a ladder, and without a hatch.
local function is_in_reach(disconnect, book)
  shall.not_exceed("Height of its highest grip", disconnect.handle_height, book.handle_height)
  if disconnect.location:is("attic", "crawl space", "roof") then
    shall.be("Readily accessible there", disconnect.readily_accessible)
    if disconnect.readily_accessible then
      review("It is told that one can reach it readily in such a place: the inspector looks whether stairs and a door lead there, not a ladder or a hatch")
    end
  end
end

---@type plumbrule.Rule
-- 690.4(E) and 240.24(F) from memory; height and its exception published by trade pages. In closets and over steps only
-- what has a breaker or fuses in it is forbidden. A switch beside the equipment that it opens may be reached by ladder.
return {
  title = "Place of a disconnect",
  cite = "690.4(E), 240.24(A), (D), (E), (F), 404.8(A), 110.28",
  about = "disconnect",
  check = function(disconnect, book)
    shall.be("Not in a bathroom", not disconnect.location:is("bathroom"))
    if disconnect.location:is("clothes closet", "stairway") then
      review("No breaker or fuse may be in such a place: the inspector looks whether this one is a plain switch")
    end
    local is_beside = disconnect.role:is("DC", "equipment", "AC") and disconnect.distance <= book.isolation_distance
    if not is_beside then is_in_reach(disconnect, book) end
    if disconnect.location:is("outside wall", "roof", "ground") then is_for_outdoors(disconnect) end
  end,
  remedy = "Put the disconnect elsewhere, its handle no more than 6 ft 7 in above the floor; outdoors use an enclosure made for it, such as type 3R.",
}

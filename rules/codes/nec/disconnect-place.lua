---@type plumbrule.Rule
-- 690.4(E) and 240.24(F) from memory; height and its exception published by trade pages. In closets and over steps only
-- what has a breaker or fuses in it is forbidden. A switch beside the equipment that it opens may be reached by ladder.
return {
  title = "Place of a disconnect",
  cite = "690.4(E), 240.24(A), (D), (E), (F), 404.8(A)",
  about = "disconnect",
  check = function(disconnect, book)
    shall.be("Not in a bathroom", not disconnect.location:is("bathroom"))
    if disconnect.location:is("clothes closet", "stairway") then
      review("No breaker or fuse may be in such a place: the inspector looks whether this one is a plain switch")
    end
    if disconnect.role:is("DC", "equipment", "AC") and disconnect.distance <= book.isolation_distance then return end
    shall.not_exceed("Height of its highest grip", disconnect.handle_height, book.handle_height)
    -- In reach is without a ladder, and without a hatch.
    if disconnect.location:is("attic", "crawl space", "roof") then
      shall.be("Readily accessible there", disconnect.readily_accessible)
      if disconnect.readily_accessible then
        review("It is told that one can reach it readily in such a place: the inspector looks whether stairs and a door lead there, not a ladder or a hatch")
      end
    end
  end,
  remedy = "Put the disconnect elsewhere, its handle no more than 6 ft 7 in above the floor.",
}

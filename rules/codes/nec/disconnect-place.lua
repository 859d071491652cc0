---@type plumbrule.Rule
-- 690.4(E) and 240.24(F) from memory. In closets and over steps only what has a breaker or fuses in it is forbidden.
return {
  title = "Place of a disconnect",
  cite = "690.4(E), 240.24(D), (E), (F)",
  about = "disconnect",
  check = function(disconnect)
    shall.be("Not in a bathroom", not disconnect.location:is("bathroom"))
    if disconnect.location:is("clothes closet", "stairway") then
      review("Nothing with a breaker or fuses in it may be there: what is in it is to be looked at", disconnect.location)
    end
    -- In reach is without a ladder, and without a hatch.
    if disconnect.location:is("attic", "crawl space", "roof") and not disconnect.role:is("DC", "equipment", "AC") and disconnect.readily_accessible then
      review("It is said that one can reach it readily, in such a place: how is to be looked at", disconnect.location)
    end
  end,
  remedy = "Put the disconnect elsewhere.",
}

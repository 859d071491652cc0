-- The least slope for a covering that the code lets lie on no flatter one; others are for a roofer, or are judged with ponding.
local function least_slope(covering, book)
  if covering:is("composition shingle") then return book.shingle_slope end
  if covering:is("concrete tile", "clay tile") then return book.tile_slope end
  if covering:is("metal shingle") then return book.metal_shingle_slope end
  if covering:is("rolled roofing") then return book.rolled_slope end
  if covering:is("corrugated metal") then return book.corrugated_slope end
end

---@type plumbrule.Rule
return {
  title = "State of covering, deck and framing",
  cite = { ["2018"] = "R324.4, R905, R908; common practice, no source for age and deck", ["2021"] = "R324.4, R905, R908; common practice, no source for age and deck",
    ["2024"] = "R329.4 (number from memory), R905, R908; common practice, no source for age and deck" },
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book)
    should.not_exceed("Age of the covering", plane.age, book.roof_age_limit)
    if plane.deck:is("spaced sheathing", "metal", "concrete") then
      review(format("The deck is %s: how mounts and water shedding work there is for a person to judge", plane.deck))
    else
      shall.be_at_least("Thickness of the deck", plane.deck_thickness, book.deck_thickness_least, inch)
    end
    if plane.covering:is("wood shake", "wood shingle", "slate", "built-up") then
      review(format("A covering of %s needs a roofer's judgement of mounts, fire class and foot traffic", plane.covering))
    end
    local least = least_slope(plane.covering, book)
    if least and plane.slope < least and not same(plane.slope, least) then
      review(format("A covering of %s is laid on slopes of %s and more, and the roof slopes %s: slope or covering is not as built, or water gets below it", plane.covering, least, plane.slope))
    end
    if plane.framing.condition:is("repaired") then
      review("Members were repaired: somebody must look at the repair")
    else
      shall.be("The framing is sound", plane.framing.condition:is("sound"))
    end
    shall.not_exceed("Spacing of the members", plane.framing.spacing, book.framing_spacing_limit, inch)
  end,
  remedy = "Repair the framing or renew the covering first; sagging, decayed or cracked members carry no array.",
}

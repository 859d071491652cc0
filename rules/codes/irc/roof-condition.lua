---@type plumbrule.Rule
return {
  title = "State of covering, deck and framing",
  cite = { ["2018"] = "R324.4, R908; common practice, no source for age and deck", ["2021"] = "R324.4, R908; common practice, no source for age and deck",
    ["2024"] = "R329.4 (number from memory), R908; common practice, no source for age and deck" },
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
    if plane.framing.condition:is("repaired") then
      review("Members were repaired: somebody must look at the repair")
    else
      shall.be("The framing is sound", plane.framing.condition:is("sound"))
    end
    shall.not_exceed("Spacing of the members", plane.framing.spacing, book.framing_spacing_limit, inch)
  end,
  remedy = "Repair the framing or renew the covering first; sagging, decayed or cracked members carry no array.",
}

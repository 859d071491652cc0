---@type plumbrule.Rule
return {
  title = "Weight of the roof that the members carry",
  cite = "3.1 (published tables of roofing weights, secondary source; usual weight: common practice, no source)",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book)
    -- Covering and deck alone weigh so much; rafters and a ceiling come on top.
    local least = plane:least_dead_load()
    if plane.dead_load < least then
      review(format("The roof is said to weigh %s, less than the %.2f psf of its covering and deck alone: its members seem to have more to spare than they do", plane.dead_load, least / (1 * psf)))
    elseif plane.covering:is("composition shingle") then
      should.be_at_least("Weight of the roof itself, whose shingles, deck and rafters weigh more as a rule,", plane.dead_load, book.usual_roof_dead_load)
    else
      shall.be_at_least("Weight of the roof itself against that of its covering and deck", plane.dead_load, least)
    end
  end,
  remedy = "Add up covering in all its layers, deck, rafters and ceiling per area of the slope, and give that as dead_load.",
}

---@type plumbrule.Rule
return {
  title = "Exposure category near open water",
  cite = "26.7.3 (from memory)",
  about = "site",
  applies = function(_, book, design) return design.modules:count() > 0 and book.near_open_water end,
  check = function(site, book, design)
    if site.exposure:is("D") then
      shall.be("The wind of open water is counted on: exposure D", true)
      return
    end
    -- Exposure D reaches inland from the shore, the farther the higher the building.
    local reach = largest(book.open_water_reach, book.open_water_heights * design.building.mean_roof_height)
    if site.distance_to_shore >= reach then
      shall.be_at_least("Distance to the nearest open shore", site.distance_to_shore, reach, ft)
    else
      review(format("The design takes exposure %s, but an open shore lies %s away, nearer than %s: where water reaches 5000 ft upwind the site is of exposure D",
        site.exposure, site.distance_to_shore, reach))
    end
  end,
  remedy = "Take exposure D, or show how far the open water reaches upwind of the site.",
}

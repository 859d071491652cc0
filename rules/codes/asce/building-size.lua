---@type plumbrule.Rule
return {
  title = "Size of the building against its roof",
  cite = "26.2 (mean roof height, least horizontal dimension); least share: common practice, no source",
  about = "building",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(building, book, design)
    local roof, rise = 0 * sq_ft, 0 * ft -- garages, porches and sheds may lie outside of the building's length and width
    for _, plane in ipairs(design.roof.planes) do
      if plane.structure:is("dwelling") then
        roof = roof + plane:plan_area()
        if plane.slope > book.mean_height_at_eave then rise = largest(rise, plane:rafter_reach() * tan(plane.slope)) end
      end
    end
    -- Wind grows with the mean roof height, and its edge zones with height and least width.
    local mean, halfway = building.mean_roof_height, building.eave_height + rise / 2
    if mean < building.eave_height then
      review(format("The mean roof height is said to be %s, below the lowest eave at %s", mean, building.eave_height))
    elseif mean + book.mean_height_slack < halfway then
      review(format("The mean roof height is said to be %s, and halfway from the eave to the top of the roof as drawn are %.1f ft", mean, halfway / (1 * ft)))
    else
      shall.be_at_least("Mean roof height against the lowest eave", mean, building.eave_height, ft)
    end
    local plan = building.length * building.width
    if building.width > building.length then
      review(format("The width of the building, %s, is to be the shorter side, but its length is %s", building.width, building.length))
    elseif plan < book.least_building_share * roof then
      review(format("The building is said to measure %s by %s, less than its roof of %.0f ft² in plan needs below it: the least width counts for the wind's edge zones", building.length, building.width, roof / (1 * sq_ft)))
    else
      shall.be_at_least("Length times width of the building against its roof in plan", plan, book.least_building_share * roof, sq_ft)
    end
  end,
  remedy = "Measure the building's outer walls in plan, and its mean roof height halfway between eave and ridge (to 10° of slope: at the eave).",
}

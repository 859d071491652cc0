---@type plumbrule.Rule
return {
  title = "Buildings that the residential code covers",
  cite = "R101.2 (from memory)",
  about = "building",
  applies = function(building, _, design)
    return design.modules:count() > 0 and not building.occupancy:is("accessory")
  end,
  check = function(building, book)
    if building.occupancy:is("multifamily", "commercial") then
      review(format("The residential code is for one- and two-family dwellings and townhouses; a %s building follows the building code, and what is said here under the residential one does not hold for it", building.occupancy))
      return
    end
    if building.stories > book.residential_stories then
      review(format("The building has %s stories above grade; the residential code is for dwellings of up to %s, and taller ones follow the building code", building.stories, book.residential_stories))
    else
      shall.not_exceed("Stories above grade", building.stories, book.residential_stories)
    end
  end,
  remedy = "Ask the authority which code it holds this building against.",
}

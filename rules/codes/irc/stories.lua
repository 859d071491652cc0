---@type plumbrule.Rule
return {
  title = "Stories that the residential code covers",
  cite = "R101.2 (from memory)",
  about = "building",
  applies = function(building, _, design)
    return design.modules:count() > 0 and building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse")
  end,
  check = function(building, book)
    if building.stories > book.residential_stories then
      review(format("The building has %s stories above grade; the residential code is for dwellings of up to %s, and taller ones follow the building code", building.stories, book.residential_stories))
    else
      shall.not_exceed("Stories above grade", building.stories, book.residential_stories)
    end
  end,
  remedy = "Ask the authority which code it holds a taller dwelling against.",
}

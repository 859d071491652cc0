---@type plumbrule.Rule
return {
  title = "A path for each length of roof",
  cite = "a city's fire code of 2022, 504.4 (secondary source)",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book, design)
    local paths = plane:pathway_count(book.pathway_width)
    shall.be_at_least("Length of roof that its paths serve", paths * book.roof_length_per_path, design.building.length, ft)
    review("The path stays clear up to 9 ft above the roof: look for wires and limbs")
  end,
  remedy = "Leave one more path free from eave to ridge.",
}

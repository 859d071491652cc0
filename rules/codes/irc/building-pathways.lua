-- That nobody would cut this roof is the official's to find: with that every rule on access falls away.
local function is_waived(design)
  for _, paper in ipairs(design.papers) do
    if paper.kind:is("fire access waiver") and paper.state:is("approved") then
      shall.be("The fire official has approved on paper that this roof would not be cut", true)
      return
    end
  end
  review("It is told that the fire department would not cut this roof, and so nothing is asked of its pathways, edges and escape openings: that is for the fire official to find, and no approved fire access waiver is among the papers")
end

-- The plane with modules of a building that has no other: the house before what stands apart.
local function find_only(roof)
  local found
  for _, plane in ipairs(roof.planes) do
    if plane.modules:count() > 0 then
      if not plane.structure:is("detached garage", "carport", "shade structure", "accessory") then return plane end
      found = found or plane
    end
  end
  return found
end

-- A roof of one plane cannot have them on two, as the section has it; whether two on the one serve is not said there.
local function check_only(plane, book)
  if plane:pathway_count(book.pathway_width) >= book.pathways_per_building then
    review("The roof has one plane, with as many pathways on it as are asked for on planes of their own: whether they serve is for the fire official to say")
  else
    shall.be_at_least("Pathways on the only plane", plane:pathway_count(book.pathway_width), book.pathways_per_building)
  end
end

-- Is anything asked of the plane, for its own sake?
local function is_asked(plane, book)
  return plane.modules:count() > 0
    and not (book.exempt_low_slope and plane.slope <= book.low_slope)
    and plane.slope <= book.exempt_steeper_than
    and not (book.exempt_detached and plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart())
end

-- What stands apart from the building looked at first has pathways of its own.
local function check_others(roof, book, first)
  local seen = { first }
  for _, plane in ipairs(roof.planes) do
    if is_asked(plane, book) then
      local clear, _, planes, building = plane:building_pathways(book.pathway_width)
      local is_new = true
      for _, name in ipairs(seen) do is_new = is_new and not same(name, building) end
      if is_new then
        table.insert(seen, building)
        if same(planes, 1) and book.pathways_per_building > 1 then
          check_only(plane, book)
        else
          shall.be_at_least(format("Planes with a clear pathway on the building of %s", plane:called()), clear, book.pathways_per_building)
        end
        if book.pathway_to_street then
          shall.be_at_least(format("Of these on the building of %s, towards the street or the driveway", plane:called()), plane:building_pathways(book.pathway_width, "street or driveway"), 1)
        end
      end
    end
  end
end

---@type plumbrule.Rule
return {
  title = "Pathways of the building",
  cite = { ["2018"] = "R324.6.1", ["2021"] = "R324.6.1", ["2024"] = "R329.6.1" },
  about = "roof",
  applies = function(roof, book, design)
    if book.exempt_sprinklered and not design.building.sprinklers:is("none") then return false end
    for _, plane in ipairs(roof.planes) do
      if is_asked(plane, book) then return true end
    end
    return false
  end,
  check = function(roof, book, design)
    if book.exempt_no_roof_operations and not design.building.roof_operations then
      is_waived(design)
      return
    end
    local share, area = roof:covered_share(), roof:array_area()
    local is_little = share < book.pathway_free_coverage or same(share, book.pathway_free_coverage)
    if book.pathway_free_coverage > 0 and is_little and area <= book.pathway_free_area then
      shall.not_exceed("Share of the roof under modules, so little that no pathway is asked for", share, book.pathway_free_coverage)
      shall.not_exceed("Area of all modules, so small that no pathway is asked for", area, book.pathway_free_area, sq_ft)
      return
    end
    local clear, _, planes, first = roof:pathway_planes(book.pathway_width)
    if same(planes, 1) and book.pathways_per_building > 1 then
      check_only(find_only(roof), book)
    else
      shall.be_at_least("Planes with a clear pathway", clear, book.pathways_per_building)
    end
    if book.pathway_to_street then
      shall.be_at_least("Of these towards the street or the driveway", roof:pathway_planes(book.pathway_width, "street or driveway"), 1)
    end
    check_others(roof, book, first)
  end,
  remedy = "Keep a strip from eave to ridge clear on a second plane, one of them on the street or driveway side.",
}

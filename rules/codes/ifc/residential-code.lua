---@type plumbrule.Rule
return {
  title = "Dwellings that are left to the residential code",
  cite = { ["2012"] = "no section", ["2015"] = "no section", ["2018"] = "1204.2.1", ["2021"] = "1205.2.1" },
  about = "building",
  applies = function(building, book, design)
    return design.modules:count() > 0 and book.ifc_exempt_residential_code
      and building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse")
  end,
  check = function(building, book)
    -- Where no residential code is in force nothing would look at the access of such a roof.
    local name = format("Stories of a dwelling that the residential code of %s may cover", book:edition("irc"))
    shall.not_exceed(name, building.stories, book.ifc_residential_stories)
  end,
  remedy = "Have the town say which code holds for the roof access of this dwelling.",
}

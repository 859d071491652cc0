---@type plumbrule.Rule
-- New in 2020; 2023 of replaced services, too (from memory).
return {
  title = "Emergency disconnect of a dwelling",
  cite = { ["2017"] = "(none)", ["2020"] = "230.85", ["2023"] = "230.85" },
  about = "service",
  applies = function(service, book, design)
    return not same(book:edition("nec"), "2017") and not service.work:is("untouched")
      and design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse")
  end,
  check = function(service)
    shall.be("There is an emergency disconnect outside", service.emergency_disconnect)
  end,
  remedy = "A new or replaced service of a dwelling takes a disconnect outside that one can reach.",
}

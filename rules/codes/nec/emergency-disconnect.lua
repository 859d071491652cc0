---@type plumbrule.Rule
-- New in 2020; 2023 of replaced services, too (from memory). That it is to be readily accessible: from memory.
return {
  title = "Emergency disconnect of a dwelling",
  cite = { ["2017"] = "(none)", ["2020"] = "230.85", ["2023"] = "230.85" },
  about = "service",
  applies = function(service, book, design)
    return not same(book:edition("nec"), "2017") and service:is_renewed()
      and design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse")
  end,
  check = function(service, _, design)
    shall.be("There is an emergency disconnect outside", service.emergency_disconnect)
    if not service.emergency_disconnect then return end
    local outside, reached = 0, 0
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("service", "emergency") and disconnect.location:is("outside wall", "ground") then
        outside = outside + 1
        if disconnect.readily_accessible then reached = reached + 1 end
      end
    end
    if outside < 1 then
      review("It is told that there is one, and no service or emergency disconnect on the list is outside: the designer tells which one it is and where")
    else
      shall.be_more_than("Service or emergency disconnects outside that one can reach", reached, 0)
    end
  end,
  remedy = "A new or replaced service of a dwelling takes a disconnect outside that one can reach.",
}

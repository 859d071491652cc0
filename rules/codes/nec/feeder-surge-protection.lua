-- A panel of sources alone supplies nothing of the dwelling.
local function has_loads(panel)
  for _, bus in ipairs(panel.busbars) do
    for _, breaker in ipairs(bus.breakers) do
      if breaker.duty:is("load") and not breaker.status:is("removed") then return true end
    end
  end
  return false
end

---@type plumbrule.Rule
-- New in 2023, as for services three years before; all of it from memory: sections, that a replaced panel counts, and
-- that only panels with branch circuits do.
return {
  title = "Surge protection of a feeder's panel",
  cite = { ["2017"] = "(none)", ["2020"] = "(none)", ["2023"] = "215.18, 225.42" },
  about = "panel",
  applies = function(panel, book, design)
    if tonumber(book:edition("nec")) < 2023 or not panel.status:is("new") or panel.is_service_panel then return false end
    if not design.building.occupancy:is("one-family dwelling", "two-family dwelling", "townhouse", "multifamily") then return false end
    return has_loads(panel) and (not panel.detached_building or panel.dwelling)
  end,
  check = function(panel)
    shall.be("There is a surge-protective device in it or right beside it", panel.surge_protection)
  end,
  remedy = "A new or replaced panel that a feeder supplies in a dwelling takes a surge-protective device.",
}

-- A new panel at the service is new service equipment, whatever is said of the rest.
local function has_new_equipment(design)
  for _, panel in ipairs(design.panels) do
    if panel.is_service_panel and panel.status:is("new") then return true end
  end
  return false
end

---@type plumbrule.Rule
-- New in 2020; that a replaced panel at the service counts, from memory (230.67(D)).
return {
  title = "Surge protection of the service",
  cite = { ["2017"] = "(none)", ["2020"] = "230.67", ["2023"] = "230.67" },
  about = "service",
  applies = function(service, book, design)
    return not same(book:edition("nec"), "2017") and (not service.work:is("untouched") or has_new_equipment(design))
  end,
  check = function(service)
    shall.be("There is a surge-protective device", service.surge_protection)
  end,
  remedy = "A new or replaced service of a dwelling takes a surge-protective device.",
}

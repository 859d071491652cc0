local function says(text) -- or words to that effect
  return string.contains(text, "PV") or string.contains(text, "PHOTOVOLTAIC") or string.contains(text, "SOLAR")
    or string.contains(text, "POWER SOURCE")
end

-- Of several sources one may be on a breaker though the interconnection tells of another place.
local function has_source_breaker(design)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and (panel.is_service_panel or panel.fed_from) then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          if breaker.duty:is("source") and not breaker.status:is("removed") then return true end
        end
      end
    end
  end
  return false
end

---@type plumbrule.Rule
-- 2017 and the letters of 2020 and 2023 from memory.
return {
  title = "Label: source breaker",
  cite = { ["2017"] = "705.12(B)(3), 408.4", ["2020"] = "705.12(C), 408.4", ["2023"] = "705.30(C), 408.4" },
  about = "design",
  applies = function(design)
    return design.modules:count() > 0 and (design.interconnection.side:is("load side") or has_source_breaker(design))
  end,
  check = function(design)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("interconnection breaker") then
        labels = labels + 1
        shall.be("It names the PV system or the power source", says(string.upper(label.text)))
        shall.be("At the panel", label.place:is("main panel", "panel", "service equipment"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the breaker as that of the PV system.",
}

local function says(text) -- or words to that effect
  return string.contains(text, "PV") or string.contains(text, "PHOTOVOLTAIC") or string.contains(text, "SOLAR")
    or string.contains(text, "POWER SOURCE")
end

---@type plumbrule.Rule
-- 2017 and the letters of 2020 and 2023 from memory.
return {
  title = "Label: source breaker",
  cite = { ["2017"] = "705.12(B)(3), 408.4", ["2020"] = "705.12(C), 408.4", ["2023"] = "705.30(C), 408.4" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 and design.interconnection.side:is("load side") end,
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

---@type plumbrule.Rule
-- What it must say, from memory.
return {
  title = "Label: sum of the breakers",
  cite = { ["2017"] = "705.12(B)(2)(3)(c)", ["2020"] = "705.12(B)(3)(3)", ["2023"] = "705.12(B)(3)" },
  about = "design",
  applies = function(design)
    if design.modules:count() < 1 then return false end
    for _, panel in ipairs(design.panels) do
      for _, bus in ipairs(panel.busbars) do
        if not panel.status:is("removed") and bus:has_sources() and bus.methods:has("sum of breakers") then
          return true
        end
      end
    end
    return false
  end,
  check = function(design)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("sum of breakers") then
        labels = labels + 1
        shall.be("At the panel", label.place:is("main panel", "panel", "service equipment"))
        shall.be("It says that all breakers but the main may not exceed the bus", string.contains(string.upper(label.text), "NOT EXCEED"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the panel: the sum of its breakers, without the main, may not exceed the bus.",
}

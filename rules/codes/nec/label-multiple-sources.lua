---@type plumbrule.Rule
-- 2017 from memory.
return {
  title = "Label: caution of several sources",
  cite = { ["2017"] = "705.12(B)(3)", ["2020"] = "705.10", ["2023"] = "705.10" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("multiple sources") then
        labels = labels + 1
        shall.be("It says MULTIPLE SOURCES OF POWER", string.contains(string.upper(label.text), "MULTIPLE SOURCES"))
        shall.be("At the service or the panel that several sources feed", label.place:is("service equipment", "meter", "main panel", "panel"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Add the caution.",
}

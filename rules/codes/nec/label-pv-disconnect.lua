local function says(text) -- or words to that effect
  return string.contains(text, "DISCONNECT")
    and (string.contains(text, "PV") or string.contains(text, "PHOTOVOLTAIC") or string.contains(text, "SOLAR"))
end

---@type plumbrule.Rule
-- Section from memory.
return {
  title = "Label: PV system disconnect",
  cite = "690.13(B)",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("PV disconnect") then
        labels = labels + 1
        shall.be("It says PV SYSTEM DISCONNECT", says(string.upper(label.text)))
        shall.be("At the disconnect", label.place:is("PV disconnect", "AC disconnect", "main panel", "panel"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the disconnect of the PV system.",
}

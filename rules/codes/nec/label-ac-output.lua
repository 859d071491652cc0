-- Deleted in 2023.
local function gives(text, unit) -- a digit, a blank and the unit, as in "32 A"
  local size = string.len(unit)
  for i = 1, string.len(text) do
    local after = string.upper(string.sub(text, i + size + 2, i + size + 2))
    if tonumber(string.sub(text, i, i)) and same(string.sub(text, i + 1, i + size + 1), " " .. unit)
      and (same(after, "") or not string.contains("ABCDEFGHIJKLMNOPQRSTUVWXYZ", after)) then
      return true
    end
  end
  return false
end

---@type plumbrule.Rule
return {
  title = "Label: rated AC output",
  cite = { ["2017"] = "690.54", ["2020"] = "690.54", ["2023"] = "(none)" },
  about = "design",
  applies = function(design, book) return design.modules:count() > 0 and not same(book:edition("nec"), "2023") end,
  check = function(design)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("AC disconnect") then
        labels = labels + 1
        shall.be("It gives amperes", gives(label.text, "A"))
        shall.be("It gives volts", gives(label.text, "V"))
        shall.be("At the point of interconnection", label.place:is("AC disconnect", "PV disconnect", "main panel", "panel", "service equipment"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark rated AC current and nominal AC voltage at the point of interconnection.",
}

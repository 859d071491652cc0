-- Only a bus that needs the 120 % option needs it: one that names the sum of breakers, but does not meet it, does.
local function meets_sum_of_breakers(bus)
  return bus.methods:has("sum of breakers") and bus:breaker_total() <= bus.rating and bus.protecting_device <= bus.rating
end

---@type plumbrule.Rule
return {
  title = "Label: do not relocate the source breaker",
  cite = { ["2017"] = "705.12(B)(2)(3)(b)", ["2020"] = "705.12(B)(3)(2)", ["2023"] = "705.12(B)(2)" },
  about = "design",
  applies = function(design, book)
    if design.modules:count() < 1 then return false end
    for _, panel in ipairs(design.panels) do
      for _, bus in ipairs(panel.busbars) do
        if not panel.status:is("removed") and bus:has_sources() and not meets_sum_of_breakers(bus)
          and bus.protecting_device + book.continuous_factor * bus:source_current() > bus.rating then
          return true
        end
      end
    end
    return false
  end,
  check = function(design)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("do not relocate") then
        labels = labels + 1
        shall.be("It forbids to move the breaker", string.contains(string.upper(label.text), "DO NOT RELOCATE"))
        shall.be("At the panel", label.place:is("main panel", "panel", "service equipment"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the breaker at the far end of the bus.",
}

local function says(text) -- or words to that effect
  return string.contains(text, "SERVICE") and (string.contains(text, "DISCONNECT") or string.contains(text, "MAIN"))
    and not string.contains(text, "NOT SERVICE")
end

---@type plumbrule.Rule
-- That each one is marked: published by trade pages. What stands as it stood keeps its marking.
return {
  title = "Label: service disconnect",
  cite = "230.70(B)",
  about = "design",
  applies = function(design) return design.service:is_renewed() end,
  check = function(design)
    local labels, switches = 0, 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("service disconnect") then
        labels = labels + 1
        shall.be("It says SERVICE DISCONNECT", says(string.upper(label.text)))
        shall.be("At the service disconnect", label.place:is("service equipment", "main panel", "meter"))
      elseif label.kind:is("emergency disconnect") and says(string.upper(label.text)) then
        labels = labels + 1 -- one label for both
      end
    end
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("service") then switches = switches + disconnect.count end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
    if labels > 0 and labels < switches then
      review(format("There are fewer labels than service disconnects (%s of %s): the inspector looks that each has one", labels, switches))
    end
  end,
  remedy = "Mark each new service disconnect as SERVICE DISCONNECT.",
}

---@type plumbrule.Rule
return {
  title = "Label of the utility's disconnect",
  cite = "Sallow Point sheet 5",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("utility disconnect") then
        labels = labels + 1
        shall.be("It says UTILITY DISCONNECT", string.contains(string.upper(label.text), "UTILITY DISCONNECT"))
        shall.be("At the disconnect", label.place:is("AC disconnect", "PV disconnect", "meter"))
        shall.be("Permanent", label.permanent)
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the switch.",
}

---@type plumbrule.Rule
-- Section from memory.
return {
  title = "Label fit for its place",
  cite = "110.21(B)",
  about = "label",
  check = function(label)
    shall.be("Permanent, and fit for sun and weather where it hangs", label.permanent)
  end,
  remedy = "Order the label in a material for its place; no handwriting where nothing changes.",
}

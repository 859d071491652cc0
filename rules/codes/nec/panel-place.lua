---@type plumbrule.Rule
-- 240.24(F) from memory.
return {
  title = "Place of a panel",
  cite = "240.24(D), (E), (F)",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel)
    shall.be("Not in a bathroom", not panel.location:is("bathroom"))
    shall.be("Not in a clothes closet", not panel.location:is("clothes closet"))
    shall.be("Not over the steps of a stairway", not panel.location:is("stairway"))
  end,
  remedy = "Move the panel.",
}

-- Poles of the breakers that were there before and stay. Tandems may share a space, so that they tell nothing.
local function poles_that_stay(panel)
  local poles = 0
  for _, bus in ipairs(panel.busbars) do
    for _, breaker in ipairs(bus.breakers) do
      if breaker.status:is("existing") and not breaker.duty:is("main", "spare") then poles = poles + breaker.poles end
    end
  end
  return poles
end

---@type plumbrule.Rule
-- 408.54 from memory. A tandem takes half a space, another may take the other half. A panel takes tandems in those of
-- its spaces alone that its marking names: how many they are is known here, which ones is not.
return {
  title = "Room for the new breakers",
  cite = "110.3(B), 408.54",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel)
    shall.not_exceed("Spaces that the new breakers take", panel:needed_spaces(), panel.free_spaces)
    if not panel.takes_tandems then
      shall.not_exceed("Spaces of the breakers that stay and the free ones together, against the panel's", poles_that_stay(panel) + panel.free_spaces, panel.spaces)
    end
    -- What the design tells twice.
    local crowded, last, tandems = panel:crowded_spaces()
    shall.not_exceed("Spaces that more breakers are in than fit", crowded, 0)
    shall.not_exceed("Highest space taken, against the panel's", last, panel.spaces)
    if tandems > 0 then
      local most = panel.model.tandem_spaces
      shall.be("The panel takes tandems", panel.takes_tandems)
      shall.not_exceed("Spaces with tandems, against those that its model takes them in", tandems, most)
      if tandems <= most and most < panel.spaces then
        review("Some of its spaces take no tandem: the inspector looks at its marking whether those with tandems do")
      end
    end
  end,
  remedy = "Give each breaker a space of its own, free spaces, add a subpanel, or use a panel that takes tandems in these spaces.",
}

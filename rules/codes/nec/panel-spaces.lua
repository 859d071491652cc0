---@type plumbrule.Rule
-- 408.54 from memory. A tandem takes half a space, another may take the other half.
return {
  title = "Room for the new breakers",
  cite = "110.3(B), 408.54",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel)
    shall.not_exceed("Spaces that the new breakers take", panel:needed_spaces(), panel.free_spaces)
    -- What the design tells twice; what it does not place, it cannot tell twice.
    local crowded, last = panel:crowded_spaces()
    shall.not_exceed("Spaces that more breakers are in than fit", crowded, 0)
    shall.not_exceed("Highest space taken, against the panel's", last, panel.spaces)
    for _, bus in ipairs(panel.busbars) do
      for _, breaker in ipairs(bus.breakers) do
        if breaker.duty:is("source") and breaker.status:is("new") and breaker.tandem then
          shall.be(format("The panel takes the tandem %s", breaker:called()), panel.takes_tandems)
        end
      end
    end
  end,
  remedy = "Give each breaker a space of its own, free spaces, add a subpanel, or use a panel that takes tandems.",
}

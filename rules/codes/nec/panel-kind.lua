---@type plumbrule.Rule
-- Split buses: up to six mains; which of them protects what, a person must see.
return {
  title = "Panels without a main and with a split bus",
  cite = "408.36, 110.3(B)",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel)
    if panel.busbars:count() < 1 then shall.be("It has a bus", false) end
    if panel.split_bus then
      review("The bus is split: the designer shows which device protects which part, and on which part each source is")
    end
    if panel.main_lugs_only then
      shall.be("A feeder with a device of its own protects it", not not panel.feeder)
      if not panel.feeder then return end
      for _, bus in ipairs(panel.busbars) do
        shall.not_exceed("That device against the bus", panel.feeder.ocpd_rating, bus.rating)
      end
    else
      for _, bus in ipairs(panel.busbars) do
        shall.not_exceed("Protecting device against the bus", bus.protecting_device, bus.rating)
      end
    end
  end,
  remedy = "Give the panel a main breaker, or a feeder device that is not larger than its bus.",
}

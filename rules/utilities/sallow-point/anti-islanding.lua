---@type plumbrule.Rule
-- UL 1741 SB belongs to IEEE 1547-2018; its date of 2022 from memory. What was there before stays.
return {
  title = "Anti-islanding and grid support",
  cite = "Sallow Point sheet 2, IEEE 1547, UL 1741 SB",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local inverters = 0
    for _, inverter in ipairs(design.inverters) do
      if inverter.status:is("new") then
        inverters = inverters + 1
        shall.be(format("Inverter %s is listed to UL 1741 SB", inverter:called()), inverter.model.listings:has("UL 1741 SB"))
      end
    end
    for _, branch in ipairs(design.branches) do
      inverters = inverters + 1
      shall.be(format("The microinverters of %s are listed to UL 1741 SB", branch:called()), branch.microinverter.listings:has("UL 1741 SB"))
    end
    shall.be_more_than("New inverters and branches", inverters, 0)
  end,
  remedy = "Use inverters that are listed to UL 1741 SB.",
}

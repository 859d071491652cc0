---@type plumbrule.Rule
-- Sections from memory.
return {
  title = "Listing of the inverter",
  cite = { ["2017"] = "690.4(B), 705.6", ["2020"] = "690.4(B), 705.6", ["2023"] = "690.4(B), 705.6" },
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter)
    shall.be("Listed to UL 1741 for use with the utility", inverter.model.listings:has("UL 1741"))
  end,
  remedy = "Use an inverter that is listed to UL 1741 and marked utility interactive.",
}

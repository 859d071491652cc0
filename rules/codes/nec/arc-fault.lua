---@type plumbrule.Rule
-- 2020 published; 2017 and 2023 from memory.
return {
  title = "DC arc-fault protection",
  cite = "690.11",
  about = "inverter",
  applies = function(inverter, book, design)
    if inverter.status:is("removed") then return false end
    for _, string in ipairs(inverter.strings) do
      if string:maximum_voltage(design.site.design_low_temperature) >= book.arc_fault_voltage then return true end
    end
    return false
  end,
  check = function(inverter)
    shall.be("Arc-fault protection in the inverter", inverter.model.arc_fault_protection)
    shall.be("Listed to UL 1699B", inverter.model.listings:has("UL 1699B"))
  end,
  remedy = "Use an inverter with listed DC arc-fault protection.",
}

---@type plumbrule.Rule
-- 2020 published; 2017 and 2023 from memory. Each string has its two ways, so that their order decides nothing.
return {
  title = "DC arc-fault protection",
  cite = "690.11",
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") and inverter.strings:count() > 0 end,
  check = function(inverter, book, design)
    for _, string in ipairs(inverter.strings) do
      shall.meet_one_of {
        { "protected", function()
            shall.be("Arc-fault protection in the inverter", inverter.model.arc_fault_protection)
            shall.be("Listed to UL 1699B", inverter.model.listings:has("UL 1699B"))
          end },
        { "below the voltage", function()
            shall.be_less_than(format("Voltage of %s", string:called()), string:maximum_voltage(design.site.design_low_temperature), book.arc_fault_voltage)
          end },
      }
    end
  end,
  remedy = "Use an inverter with listed DC arc-fault protection.",
}

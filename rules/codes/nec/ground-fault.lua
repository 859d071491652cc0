---@type plumbrule.Rule
-- 2020 published; 2017 and 2023 from memory. The indication is asked for from 2020. Solid grounding is for two strings
-- that are neither on nor in a building: 690.41(A)(5) and the exception to (B), from memory.
return {
  title = "DC ground-fault protection",
  cite = "690.41(A), (B)",
  about = "grounding",
  applies = function(_, _, design) return design.strings:count() > 0 end,
  check = function(grounding, book, design)
    shall.be("Ground-fault protection of the DC circuits", grounding.ground_fault_protection)
    shall.be("No DC conductor is solidly grounded, on a building", not grounding.solidly_grounded)
    -- The data sheet is judged, not only what the design says beside.
    for _, inverter in ipairs(design.inverters) do
      if inverter.status:is("new") and not inverter.model.ground_fault_protection and inverter.strings:count() > 0 then
        review(format("The data sheet of %s names no ground-fault protection: the designer shows what else protects its strings", inverter:called()), inverter.model)
      end
    end
    if not same(book:edition("nec"), "2017") then
      shall.be("A ground fault is shown at a readily accessible place", grounding.ground_fault_indication)
    end
  end,
  remedy = "Use an inverter with ground-fault protection that shows the fault where one can see it.",
}

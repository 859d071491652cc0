-- On the DC side of a hybrid inverter a battery reaches the utility through that alone: it has no breaker of its own.
local function may_be_behind(source, design)
  if not source.kind:is("storage") or source.breakers:count() > 0 then return nil end
  for _, inverter in ipairs(design.inverters) do
    if not inverter.status:is("removed") and inverter.model.type:is("hybrid") then return inverter end
  end
  return nil
end

---@type plumbrule.Rule
-- 408.36(D) from memory. 702: optional standby; 705.12 counts every source that can run beside the utility.
return {
  title = "Other sources on the premises",
  cite = { ["2017"] = "408.36(D), 702.5, 705.12, 705.60(B), 706", ["2020"] = "408.36(D), 702.5, 705.12, 705.30, 706", ["2023"] = "408.36(D), 702.5, 705.12, 705.30, 706" },
  about = "source",
  check = function(source, book, design)
    if source.parallel then
      shall.be("It is not a plain generator", not source.kind:is("generator"))
      shall.be_more_than("Count of the breakers it is on", source.breakers:count(), 0)
      shall.be_more_than("Its output current, counted on every bus up to the service", source.output_current, 0 * A)
      for _, breaker in ipairs(source.breakers) do
        if not breaker.status:is("removed") then
          shall.be_at_least(format("Rating of its breaker against %s %% of its output", 100 * book.continuous_factor), breaker.rating, book.continuous_factor * source.output_current)
        end
      end
      if not source.kind:is("existing PV", "storage") then
        review("It runs beside the utility: the designer shows by which listed equipment, and that it stops when the utility's power fails")
      end
    else
      for _, breaker in ipairs(source.breakers) do
        if not breaker.status:is("removed") then
          -- Only sources that are listed to run beside the utility are spared it.
          shall.be(format("A fastener holds breaker %s, which it feeds from behind", breaker:called()), breaker.fastened_in_place)
        end
      end
      local hybrid = may_be_behind(source, design)
      if hybrid and not source.interlocked then
        review(format("It is on no breaker and nothing interlocks it: the designer shows that it stands on the DC side of %s, a hybrid, and reaches the utility through that alone", hybrid:called()))
      else
        shall.be("A transfer switch or interlock keeps it from running beside the utility", source.interlocked)
      end
    end
    if source.kind:is("storage") then
      shall.be("Listed to UL 9540", source.listings:has("UL 9540"))
      review("Storage has no rule here: the authority looks at its place, spacing, ventilation, disconnect and emergency shutdown (Article 706 and the fire code)")
    end
    if not source.parallel then return end
    -- Every bus rests on the current told: one that is told too small hides behind every rule. Last, so that what is
    -- untold hides no fault.
    local by_power = source.power / design.service.voltage
    if source.output_current < by_power * (1 - book.figures_apart) then
      review(format("Its output current is told to be %s, and its power at the service's voltage makes %.2f A: the designer looks which figure is meant", source.output_current, by_power / A))
    end
  end,
  remedy = "Interlock what may not run beside the utility; put what may on a breaker that the design shows; a battery on the DC side of a hybrid inverter does not run beside the utility by itself.",
}

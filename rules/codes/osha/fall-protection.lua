---@type plumbrule.Rule
return {
  title = "Fall protection",
  cite = "29 CFR 1926.501(b)(13)",
  about = "jobsite",
  -- The threshold is six feet or more: from a low eave work goes on up to the middle of the roof and higher.
  applies = function(jobsite, book, design)
    local building, from = design.building, book.fall_protection_height
    return jobsite.working_height >= from or building.eave_height >= from or building.mean_roof_height >= from
  end,
  check = function(jobsite, book, design)
    if jobsite.working_height < book.fall_protection_height and design.building.eave_height < book.fall_protection_height then
      review(format("The lowest unprotected edge is said to be %s up, and the middle of the roof lies %s above the ground: show what lies below each place of work, the rakes' too", jobsite.working_height, design.building.mean_roof_height))
      return
    elseif jobsite.working_height < book.fall_protection_height then
      review(format("The lowest unprotected edge is said to be %s up, but the lowest eave is %s above the ground: show what lies below each edge", jobsite.working_height, design.building.eave_height))
      return
    end
    if jobsite.fall_protection:is("warning line") then
      for _, plane in ipairs(design.roof.planes) do
        if plane.modules:count() > 0 then
          shall.not_exceed(format("Slope of %s, where a warning line is to do", plane:called()), plane.slope, book.warning_line_slope, deg)
        end
      end
      review("A warning line needs a safety monitor or other measures beside it: whoever runs the job must say which")
    else
      shall.be("Guardrail, safety net or personal fall arrest", jobsite.fall_protection:is("guardrail", "safety net", "personal fall arrest"))
    end
    if jobsite.fall_protection:is("guardrail") then
      shall.be_at_least("Height of the guardrail", jobsite.guardrail_height, book.guardrail_least, inch)
      shall.not_exceed("Height of the guardrail, at most", jobsite.guardrail_height, book.guardrail_most, inch)
    end
    if jobsite.fall_protection:is("personal fall arrest") then
      shall.be("A plan to rescue somebody who hangs in a harness", jobsite.rescue_plan)
    end
    for _, person in ipairs(jobsite.crew) do
      shall.be("Trained to use fall protection", person.fall_trained)
    end
  end,
  remedy = "Plan guardrails, nets or harnesses with anchors before the crew goes up.",
}

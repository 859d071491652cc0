---@type plumbrule.Rule
return {
  title = "Fall protection",
  cite = "29 CFR 1926.501(b)(13)",
  about = "jobsite",
  -- The threshold is six feet or more.
  applies = function(jobsite, book) return jobsite.working_height >= book.fall_protection_height end,
  check = function(jobsite)
    shall.be("Guardrail, safety net or personal fall arrest", jobsite.fall_protection:is("guardrail", "safety net", "personal fall arrest"))
    if jobsite.fall_protection:is("guardrail") then
      shall.be_at_least("Height of the guardrail", jobsite.guardrail_height, 39 * inch)
      shall.not_exceed("Height of the guardrail", jobsite.guardrail_height, 45 * inch)
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

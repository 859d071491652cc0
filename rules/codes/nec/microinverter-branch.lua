---@type plumbrule.Rule
return {
  title = "Microinverters on a branch",
  cite = { ["2017"] = "690.8(A)(3), 690.9(B), 705.60, 110.3(B)", ["2020"] = "690.8(A)(1)(e), 705.28, 705.30, 110.3(B)", ["2023"] = "690.8(A)(1), 705.28, 705.30, 110.3(B)" },
  about = "branch",
  check = function(branch, book, design)
    local model = branch.microinverter
    local needed = book.continuous_factor * branch:output_current()
    if not model.type:is("microinverter") then shall.be("Its model is a microinverter", false) end
    shall.be_equal("Microinverters, one for each module", branch.microinverters, branch.modules:count())
    shall.not_exceed("Microinverters on the branch", branch.microinverters, model.maximum_per_branch)
    if not same(model.nominal_voltage, design.service.voltage) and not same(model.nominal_voltage, design.service.voltage_to_ground) then
      shall.be_equal("Nominal voltage of their output, against the service's", model.nominal_voltage, design.service.voltage)
    end
    -- All sizes rest on the marked current: one that is told too small hides behind every rule.
    local by_power = model.rated_power / model.nominal_voltage
    if model.output_current < by_power * (1 - book.figures_apart) then
      review(format("The marked output current of one is told to be %s, and its power at its voltage makes %.2f A: the designer looks which figure is meant", model.output_current, by_power / A))
    end
    local breakers = 0
    for _, breaker in ipairs(branch.breakers) do
      if not breaker.status:is("removed") then
        breakers = breakers + 1
        shall.be_at_least(format("Rating of the breaker against %s %% of the branch's current", 100 * book.continuous_factor), breaker.rating, needed)
        shall.not_exceed("Rating of the breaker against what the maker asks for", breaker.rating, model.branch_ocpd)
      end
    end
    shall.be_equal("Count of the breakers for the branch", breakers, 1)
  end,
  remedy = "Put fewer microinverters on the branch, or use the breaker that their instructions name.",
}

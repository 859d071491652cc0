---@type plumbrule.Rule
-- The marked output current counts, not power over voltage: 7 700 W / 240 V is 32.08 A, marked 32 A.
return {
  title = "Overcurrent device of an inverter",
  cite = { ["2017"] = "690.9(B), 705.60(B), 110.3(B)", ["2020"] = "705.30(B), 110.3(B)", ["2023"] = "705.30(B), 110.3(B)" },
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter, book, design)
    local model = inverter.model
    local needed = book.continuous_factor * model.output_current
    local function judge(rating, whose)
      shall.be_at_least(format("Rating of %s against %s %% of the marked output current", whose, 100 * book.continuous_factor), rating, needed)
      shall.not_exceed(format("Rating of %s against the largest that the maker allows", whose), rating, model.maximum_ocpd)
      should.not_exceed(format("Rating of %s against the next standard size", whose), rating, calc.ocpd_up { current = needed, edition = tonumber(book:edition("nec")) })
    end
    -- What else protects it on its way must suit it, too.
    local function judge_its_circuits()
      for _, circuit in ipairs(design.circuits) do
        if circuit.role:is("inverter output") and not circuit.status:is("removed") and not circuit.ocpd:is("none") then
          for _, carried in ipairs(circuit.carries) do
            if same(carried:kind_of(), "inverter") and same(carried, inverter) and not same(circuit.ocpd_rating, design.interconnection.ocpd_rating) then
              judge(circuit.ocpd_rating, format("the device of circuit %s", circuit:called()))
            end
          end
        end
      end
    end
    local function goes_with_its_panel(breaker)
      for _, panel in ipairs(design.panels) do
        if panel.status:is("removed") then
          for _, bus in ipairs(panel.busbars) do
            for _, other in ipairs(bus.breakers) do
              if same(other, breaker) then return true end
            end
          end
        end
      end
      return false
    end
    -- 240 V between the ungrounded conductors, or on one of them and the neutral.
    if not same(model.nominal_voltage, design.service.voltage) and not same(model.nominal_voltage, design.service.voltage_to_ground) then
      shall.be_equal("Nominal voltage of its output, against the service's", model.nominal_voltage, design.service.voltage)
    end
    -- All sizes rest on the marked current: one that is told too small hides behind every rule.
    local by_power = model.rated_power / model.nominal_voltage
    if model.output_current < by_power * (1 - book.figures_apart) then
      review(format("Its marked output current is told to be %s, and its power at its voltage makes %.2f A: the designer looks which figure is meant", model.output_current, by_power / A))
    end
    local breakers = 0
    for _, breaker in ipairs(inverter.breakers) do
      if not breaker.status:is("removed") and not goes_with_its_panel(breaker) then
        breakers = breakers + 1
        judge(breaker.rating, "the device")
      end
    end
    if breakers < 1 and not design.interconnection.side:is("load side") then
      judge(design.interconnection.ocpd_rating, "the device")
      judge_its_circuits()
    else
      shall.be_equal("Count of the breakers for the inverter", breakers, 1)
    end
  end,
  remedy = "Put the inverter on one breaker of its own: the next standard size at or above 125 % of the marked output current, within what the inverter's instructions allow.",
}

---@type plumbrule.Rule
-- Letters of 705.12 of 2020 and of 705.30 of 2023, and 240.15(B), from memory.
return {
  title = "A breaker that is fed from behind",
  cite = { ["2017"] = "705.12(B)(4), 240.15(B), 110.3(B)", ["2020"] = "705.12(D), 240.15(B), 110.3(B)", ["2023"] = "705.30(D), 240.15(B), 110.3(B)" },
  about = "breaker",
  applies = function(breaker)
    if breaker.duty:is("main", "spare") or breaker.status:is("removed") then return false end
    -- Nothing named behind it: no source, wherever those are that no breaker has yet.
    return breaker.duty:is("source") or breaker.serves and breaker:has_sources() or false
  end,
  check = function(breaker, _, design)
    -- All ungrounded conductors open together: a source of 240 V on one pole would leave the other live.
    local serves, volts = breaker.serves, nil
    if serves and same(serves:kind_of(), "inverter") then
      volts = serves.model.nominal_voltage
    elseif serves and same(serves:kind_of(), "branch") then
      volts = serves.microinverter.nominal_voltage
    elseif serves and same(serves:kind_of(), "panel") and serves.feeder then
      volts = serves.feeder.nominal_voltage
    end
    if serves and same(serves:kind_of(), "source") and breaker.poles < 2 then
      review(format("It is on one pole: the designer shows that %s runs between one ungrounded conductor and the neutral", serves:called()))
    end
    if volts and volts > design.service.voltage_to_ground then
      shall.be_at_least("Poles, one for each ungrounded conductor", breaker.poles, 2)
    elseif volts and breaker.poles < 2 and not same(volts, 120 * V) then
      review(format("It is on one pole, its source gives %s, and the service is told to have %s to ground: the utility says whether the source's other conductor is grounded, else two poles are needed", volts, design.service.voltage_to_ground))
    end
    shall.be("Suitable for backfeed", breaker.suitable_for_backfeed)
    shall.be("Listed for this panel", breaker.listed_for_panel)
    if not breaker.protection:is("none") then
      shall.be("Its arc-fault or ground-fault protection is listed for backfeed", breaker.protection_listed_for_backfeed)
    end
  end,
  remedy = "Use a breaker that the panel's marking names and that may be fed from either side.",
}

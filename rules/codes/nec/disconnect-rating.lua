---@type plumbrule.Rule
-- Letters of the sections from memory. A switch takes no more than its rating: the breaker before it sees to that.
return {
  title = "Rating of a disconnect",
  cite = { ["2017"] = "690.13(E), 690.15(D), 110.3(B)", ["2020"] = "690.13(D), 690.15(B), 110.3(B)", ["2023"] = "690.13(D), 690.15(B), 110.3(B)" },
  about = "disconnect",
  applies = function(disconnect)
    return disconnect.role:is("PV system", "AC", "DC", "utility", "equipment")
  end,
  check = function(disconnect, book, design)
    local of = disconnect.of
    local function behind(breakers)
      for _, breaker in ipairs(breakers) do
        if not breaker.status:is("removed") then
          shall.be_at_least(format("Current rating against breaker %s before it", breaker:called()), disconnect.rating, breaker.rating)
        end
      end
    end
    local function strings_of(strings)
      local volts, amperes = 0 * V, 0 * A
      for _, string in ipairs(strings) do
        volts = largest(volts, string:maximum_voltage(design.site.design_low_temperature))
        amperes = amperes + string:source_current()
      end
      shall.be_at_least("Current rating against 125 % of the strings' current", disconnect.rating, book.continuous_factor * amperes)
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, volts)
    end
    if not of then
      review("The design names nothing that it disconnects")
    elseif same(of:kind_of(), "inverter") and not disconnect.role:is("DC") then
      shall.be_at_least("Current rating against 125 % of the output", disconnect.rating, book.continuous_factor * of:output_current())
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, of.model.nominal_voltage)
      behind(of.breakers)
      if of.breakers:count() < 1 and disconnect.role:is("PV system") and design.interconnection.side:is("supply side") then
        shall.be_at_least("Current rating against the overcurrent device in it", disconnect.rating, design.interconnection.ocpd_rating)
      end
    elseif same(of:kind_of(), "inverter") or same(of:kind_of(), "combiner") then
      strings_of(of.strings)
    elseif same(of:kind_of(), "string") then
      strings_of { of }
    elseif same(of:kind_of(), "branch") then
      shall.be_at_least("Current rating against 125 % of the output", disconnect.rating, book.continuous_factor * of:output_current())
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, of.microinverter.nominal_voltage)
      behind(of.breakers)
    elseif same(of:kind_of(), "panel") then
      shall.be_at_least("Current rating against 125 % of the sources behind it", disconnect.rating, book.continuous_factor * of:source_current())
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, design.service.voltage)
      behind(of.breakers)
    else
      shall.be_at_least("Current rating against 125 % of the source's output", disconnect.rating, book.continuous_factor * of.output_current)
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, design.service.voltage)
    end
  end,
  remedy = "Use a switch rated for 125 % of the current, for the breaker before it and for the largest voltage.",
}

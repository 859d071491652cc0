---@type plumbrule.Rule
-- Letters of the sections from memory. Two poles of its own for each string: common practice, no source. A switch takes no more than its rating: the breaker before it sees to that.
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
    local function strings_of(strings, is_joined) -- joined: one pair of poles takes them all
      local volts, amperes, most, count = 0 * V, 0 * A, 0 * A, 0
      for _, string in ipairs(strings) do
        local current = string:source_current()
        volts = largest(volts, string:maximum_voltage(design.site.design_low_temperature))
        amperes, most, count = amperes + current, largest(most, current), count + 1
      end
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, volts)
      local needed = book.continuous_factor * amperes
      if is_joined or count < 2 or disconnect.rating >= needed then
        shall.be_at_least(format("Current rating against %s %% of the strings' current", 100 * book.continuous_factor), disconnect.rating, needed)
        return
      end
      -- Less than all together: enough where each string has poles of its own.
      local alone = book.continuous_factor * most
      if disconnect.rating < alone or disconnect.poles >= 2 * count then
        shall.be_at_least(format("Current rating against %s %% of one string's current", 100 * book.continuous_factor), disconnect.rating, alone)
      else
        review(format("Its %s are enough for each string by itself and not for all together, which take %s: the inspector looks at its diagram which strings share a pole", disconnect.rating, needed))
      end
    end
    if not of then
      review("The design names nothing that it disconnects: the designer tells what, and its rating is held against that")
    elseif same(of:kind_of(), "inverter") and not disconnect.role:is("DC") then
      shall.be_at_least(format("Current rating against %s %% of the output", 100 * book.continuous_factor), disconnect.rating, book.continuous_factor * of:output_current())
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, of.model.nominal_voltage)
      behind(of.breakers)
      if of.breakers:count() < 1 and disconnect.role:is("PV system") and design.interconnection.side:is("supply side") then
        shall.be_at_least("Current rating against the overcurrent device in it", disconnect.rating, design.interconnection.ocpd_rating)
      end
    elseif same(of:kind_of(), "inverter") or same(of:kind_of(), "combiner") then
      strings_of(of.strings, same(of:kind_of(), "combiner"))
    elseif same(of:kind_of(), "string") then
      strings_of({ of }, true)
    elseif same(of:kind_of(), "branch") then
      shall.be_at_least(format("Current rating against %s %% of the output", 100 * book.continuous_factor), disconnect.rating, book.continuous_factor * of:output_current())
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, of.microinverter.nominal_voltage)
      behind(of.breakers)
    elseif same(of:kind_of(), "panel") then
      shall.be_at_least(format("Current rating against %s %% of the sources behind it", 100 * book.continuous_factor), disconnect.rating, book.continuous_factor * of:source_current())
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, design.service.voltage)
      behind(of.breakers)
      -- Of the service panel: no breaker stands before it, and all the house goes through it.
      if of.is_service_panel then
        shall.be_at_least("Current rating against the service's, whose panel it opens", disconnect.rating, design.service.disconnect_rating)
      end
    else
      shall.be_at_least(format("Current rating against %s %% of the source's output", 100 * book.continuous_factor), disconnect.rating, book.continuous_factor * of.output_current)
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, design.service.voltage)
    end
  end,
  remedy = "Use a switch rated for 125 % of the current, for the breaker before it and for the largest voltage.",
}

---@type plumbrule.Rule
-- Letters of the sections from memory.
return {
  title = "Rating of a disconnect",
  cite = { ["2017"] = "690.13(E), 690.15(D), 110.3(B)", ["2020"] = "690.13(D), 690.15(B), 110.3(B)", ["2023"] = "690.13(D), 690.15(B), 110.3(B)" },
  about = "disconnect",
  applies = function(disconnect)
    return disconnect.role:is("PV system", "AC", "DC", "utility", "equipment")
  end,
  check = function(disconnect, book, design)
    local of = disconnect.of
    if not of then
      review("The design names nothing that it disconnects")
    elseif same(of:kind_of(), "inverter") and not disconnect.role:is("DC") then
      shall.be_at_least("Current rating against 125 % of the output", disconnect.rating, book.continuous_factor * of:output_current())
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, of.model.nominal_voltage)
    elseif same(of:kind_of(), "inverter") then
      local volts, amperes = 0 * V, 0 * A
      for _, string in ipairs(of.strings) do
        volts = largest(volts, string:maximum_voltage(design.site.design_low_temperature))
        amperes = amperes + string:source_current()
      end
      shall.be_at_least("Current rating against 125 % of the strings' current", disconnect.rating, book.continuous_factor * amperes)
      shall.be_at_least("Voltage rating", disconnect.voltage_rating, volts)
    elseif same(of:kind_of(), "branch") then
      shall.be_at_least("Current rating against 125 % of the output", disconnect.rating, book.continuous_factor * of:output_current())
    elseif same(of:kind_of(), "panel") then
      shall.be_at_least("Current rating against 125 % of the sources behind it", disconnect.rating, book.continuous_factor * of:source_current())
    else
      review("What it disconnects has no output current in the design", of)
    end
  end,
  remedy = "Use a switch rated for 125 % of the current and for the largest voltage.",
}

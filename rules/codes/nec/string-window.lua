---@type plumbrule.Rule
return {
  title = "String against the inverter's window",
  cite = "110.3(B)",
  about = "string",
  applies = function(string) return not string.has_converters and not not string.inverter end,
  check = function(string, book, design)
    local inverter = string.inverter.model
    local hot = string:hot_voltage(design.site.design_high_temperature, book.cell_temperature_rise)
    shall.be_at_least("Operating voltage in the heat against the lower end of the window", hot, inverter.tracking_low)
    -- At start the modules stand near open circuit, which is higher than this.
    should.be_at_least("Operating voltage in the heat against the voltage to start", hot, inverter.start_voltage)
    should.not_exceed("Operating voltage in the cold against the upper end of the window",
      string:hot_voltage(design.site.design_low_temperature, 0 * delta_C), inverter.tracking_high)
  end,
  remedy = "Lengthen or shorten the string, or choose an inverter whose window fits.",
}

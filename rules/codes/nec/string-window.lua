-- The hottest air that a circuit is told to run in outside, of those that carry the string.
local function hottest_air(string, design)
  local hottest
  for _, circuit in ipairs(design.circuits) do
    if not circuit.status:is("removed") and circuit.role:is("PV source") and not circuit.inside_building then
      for _, carried in ipairs(circuit.carries) do
        if same(carried:kind_of(), "string") and same(carried, string) then
          hottest = hottest and largest(hottest, circuit.ambient_temperature) or circuit.ambient_temperature
        end
      end
    end
  end
  return hottest
end

---@type plumbrule.Rule
-- Air that is told cooler for the modules than for the conductors below them would hide a string that is too short.
return {
  title = "String against the inverter's window",
  cite = "110.3(B)",
  about = "string",
  applies = function(string) return not string.has_converters and not not string.inverter end,
  check = function(string, book, design)
    local inverter = string.inverter.model
    local hot = string:hot_voltage(design.site.design_high_temperature, book.cell_temperature_rise)
    shall.be_at_least("Operating voltage in the heat against the lower end of the window", hot, inverter.tracking_low)
    local air = hottest_air(string, design)
    if air and air > design.site.design_high_temperature then
      review(format("Its conductors outside count on %s of air, and the site has %s in the heat: the designer tells which holds", air, design.site.design_high_temperature))
    end
    -- At start the modules stand near open circuit, which is higher than this.
    should.be_at_least("Operating voltage in the heat against the voltage to start", hot, inverter.start_voltage)
    should.not_exceed("Operating voltage in the cold against the upper end of the window",
      string:hot_voltage(design.site.design_low_temperature, 0 * delta_C), inverter.tracking_high)
  end,
  remedy = "Lengthen or shorten the string, or choose an inverter whose window fits.",
}

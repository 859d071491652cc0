---@type plumbrule.Rule
return {
  title = "Size of the generation",
  cite = "Sallow Point sheet 3",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local power = 0 * W
    for _, inverter in ipairs(design.inverters) do
      if not inverter.status:is("removed") then power = power + inverter.model.rated_power end
    end
    for _, branch in ipairs(design.branches) do
      power = power + branch.microinverters * branch.microinverter.rated_power
    end
    for _, source in ipairs(design.other_sources) do
      if source.kind:is("existing PV") then power = power + source.power end
    end
    shall.not_exceed("AC power of all PV", power, book.largest_generation, kW)
    should.not_exceed("AC power of all PV, for the simple application", power, book.simple_generation, kW)
  end,
  remedy = "Choose smaller inverters, agree on a limit of export, or ask for a study.",
}

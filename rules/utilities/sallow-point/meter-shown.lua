---@type plumbrule.Rule
-- Who shows no meter of the utility's has not been asked whether it counts both ways.
return {
  title = "The utility's meter is on the list",
  cite = "Sallow Point sheet 4",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local meters = 0
    for _, meter in ipairs(design.meters) do
      if meter.revenue then meters = meters + 1 end
    end
    shall.be_at_least("Meters of the utility's", meters, 1)
  end,
  remedy = "Tell the utility's meter among the meters.",
}

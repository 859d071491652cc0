---@type plumbrule.Rule
return {
  title = "Fire class of racking and modules",
  cite = "R902.4",
  about = "racking",
  check = function(racking, _, design)
    local model = racking.model
    shall.be("The racking is listed to UL 2703", model.listings:has("UL 2703"))
    for _, module in ipairs(design.modules) do
      shall.be("The racking's fire class holds for this module's type", model.fire_types:has(tostring(module.model.fire_type)))
      shall.be_at_least("Slope of the roof", module.plane.slope, model.fire_minimum_slope)
    end
    shall.be("The system has a fire class", not racking.system_fire_class:is("unrated"))
  end,
  remedy = "Use modules of a type that the racking's listing names.",
}

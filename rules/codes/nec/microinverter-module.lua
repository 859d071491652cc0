---@type plumbrule.Rule
return {
  title = "Modules against their microinverter",
  cite = { ["2017"] = "110.3(B), 690.7", ["2020"] = "110.3(B), 690.7", ["2023"] = "110.3(B), 690.7" },
  about = "branch",
  check = function(branch, _, design)
    if branch.modules:count() < 1 then shall.be("The branch has modules", false) end
    local model = branch.microinverter
    local seen -- each model once
    for _, module in ipairs(branch.modules) do
      if not seen or not same(seen, module.model) then
        seen = module.model
        local cold = seen:cold_voltage(design.site.design_low_temperature)
        shall.be_at_least("Rated power of a module", seen.rated_power, model.minimum_module_power)
        shall.not_exceed("Rated power of a module", seen.rated_power, model.maximum_module_power)
        shall.not_exceed("Its open-circuit voltage in the cold", cold, model.maximum_dc_voltage)
        shall.not_exceed("Its short-circuit current", seen.short_circuit_current, model.maximum_short_circuit_current)
      end
    end
  end,
  remedy = "Pair the modules with a microinverter that is rated for them.",
}

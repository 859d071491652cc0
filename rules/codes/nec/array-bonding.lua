---@type plumbrule.Rule
return {
  title = "Bonding of modules and racking",
  cite = { ["2017"] = "690.43(A), (B)", ["2020"] = "690.43(A), (B)", ["2023"] = "690.43(A), (B)" },
  about = "grounding",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(grounding, _, design)
    shall.be("Frames and racking are bonded", not grounding.bonding:is("none"))
    if grounding.bonding:is("listed racking", "listed module-rack pair") then
      shall.be("The racking is listed to UL 2703", design.racking.model.listings:has("UL 2703"))
      shall.be("This module is listed with this racking for bonding", grounding.pair_listed)
      -- The data sheet is judged, not only what the design says beside.
      shall.be("The racking bonds the modules that it is listed with, by its data sheet", design.racking.model.bonds_modules)
    end
  end,
  remedy = "Use a module that the racking's listing names, or bond by listed jumpers and lugs.",
}

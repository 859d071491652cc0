---@type plumbrule.Rule
-- Section from memory.
return {
  title = "Listing of the modules",
  cite = "690.4(B)",
  about = "module_model",
  applies = function(model, _, design)
    for _, module in ipairs(design.modules) do
      if same(module.model, model) then return true end
    end
    return false
  end,
  check = function(model)
    shall.be("Listed to UL 61730 or UL 1703", model.listings:has("UL 61730") or model.listings:has("UL 1703"))
  end,
  remedy = "Use a module that is listed to UL 61730 (older ones: UL 1703).",
}

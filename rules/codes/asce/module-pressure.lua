---@type plumbrule.Rule
return {
  title = "Pressure rating of the modules",
  cite = "Chapter 29 (wind) and Chapter 7 (snow)",
  about = "module_model",
  applies = function(model, _, design)
    for _, module in ipairs(design.modules) do
      if same(module.model, model) then return true end
    end
    return false
  end,
  check = function(model, book)
    -- A test load is 1.5 times the design load that it stands for.
    local share = 1
    if model.rating_basis:is("test") then share = 1 / 1.5 end
    shall.be_at_least("Rated uplift against what the town asks", share * model.uplift_rating, book.module_uplift_demand)
    shall.be_at_least("Rated downward load against what the town asks", share * model.down_rating, book.module_down_demand)
  end,
  remedy = "Choose a module rated for the town's wind and snow, or clamp it where its maker's instructions give a higher rating.",
}

---@type plumbrule.Rule
return {
  title = "Two people lift a module",
  cite = "Lantern standard 2",
  about = "jobsite",
  check = function(jobsite, _, design)
    for _, module in ipairs(design.modules) do
      if module.model.weight > 40 * lb then
        shall.be_at_least("People on one module", jobsite.lifters, 2)
        return
      end
    end
    shall.be_at_least("People on one module", jobsite.lifters, 1)
  end,
  remedy = "Plan two people for every module heavier than 40 lb.",
}

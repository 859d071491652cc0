---@type plumbrule.Rule
return {
  title = "Roof plan for the engine companies",
  cite = "District rule 9",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local plans = 0
    for _, paper in ipairs(design.papers) do
      if paper.kind:is("roof plan") and not paper.state:is("missing") then plans = plans + 1 end
    end
    shall.be_at_least("Roof plans that show the pathways", plans, 1)
  end,
  remedy = "Send the district the roof plan with the application.",
}

---@type plumbrule.Rule
return {
  title = "Lifting modules",
  cite = "29 U.S.C. 654(a)(1), as a hazard to be kept off; the weight is common practice",
  about = "jobsite",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(jobsite, book, design)
    local heaviest = design.modules[1].model.weight
    for _, module in ipairs(design.modules) do heaviest = largest(heaviest, module.model.weight) end
    shall.be_at_least("People on a module when it is lifted", jobsite.lifters, 1)
    if jobsite.lifters < 2 then
      shall.not_exceed("Weight of a module that one person lifts", heaviest, book.one_person_lift)
    end
  end,
  remedy = "Lift with two people, or by hoist.",
}

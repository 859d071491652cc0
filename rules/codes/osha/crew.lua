---@type plumbrule.Rule
return {
  title = "The crew",
  cite = "29 CFR 1926.50(c) (first aid), 1926.503 (training)",
  about = "jobsite",
  check = function(jobsite)
    local aiders = 0
    for _, person in ipairs(jobsite.crew) do
      if person.first_aid then aiders = aiders + 1 end
    end
    shall.be_at_least("People in the crew", jobsite.crew:count(), 2)
    shall.be_at_least("Of these trained in first aid", aiders, 1)
  end,
  remedy = "Nobody works on a roof alone; send somebody to a first-aid course.",
}

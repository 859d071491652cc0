---@type plumbrule.Rule
return {
  title = "Ground below the work, and lockout",
  cite = "29 CFR 1926.501(c), 1926.417",
  about = "jobsite",
  check = function(jobsite)
    shall.be("The ground below the work is marked off", jobsite.perimeter_marked)
    shall.be("There is a plan to lock out what could be live", jobsite.lockout_plan)
  end,
  remedy = "Mark off the ground below, and write down what is locked out by whom.",
}

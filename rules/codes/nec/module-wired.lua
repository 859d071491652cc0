---@type plumbrule.Rule
-- A module in no circuit, or in two, makes every count and current wrong.
return {
  title = "Every module in one circuit",
  cite = "110.3(B)",
  about = "module",
  applies = function(module) return module.status:is("new") end,
  check = function(module)
    shall.be_equal("Strings and branches that it is in", module.strings:count() + module.branches:count(), 1)
  end,
  remedy = "Name the module in one string or one branch.",
}

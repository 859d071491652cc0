---@type plumbrule.Rule
-- A module in no circuit, or in two, makes every count and current wrong.
return {
  title = "Every module in one circuit",
  cite = "110.3(B)",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local modules, right = 0, 0
    for _, module in ipairs(design.modules) do
      if module.status:is("new") then
        modules = modules + 1
        if same(module.strings:count() + module.branches:count(), 1) then
          right = right + 1
        else
          shall.be(format("Module %s is in one string or branch", module:called()), false)
        end
      end
    end
    shall.be_equal("Modules in exactly one string or branch", right, modules)
  end,
  remedy = "Name each module in one string or one branch.",
}

---@type plumbrule.Rule
return {
  title = "Power of the modules against their microinverter's",
  cite = "common practice, no limit in the code",
  about = "branch",
  applies = function(branch) return branch.modules:count() > 0 end,
  check = function(branch, book)
    local seen -- each model once
    for _, module in ipairs(branch.modules) do
      if not seen or not same(seen, module.model) then
        seen = module.model
        local ratio = seen.rated_power / branch.microinverter.rated_power
        should.not_exceed("DC power over AC power", ratio, book.dc_ac_most)
        should.be_at_least("DC power over AC power, at the least", ratio, book.dc_ac_least)
      end
    end
  end,
  remedy = "Choose a microinverter of another size.",
}

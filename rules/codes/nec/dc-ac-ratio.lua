---@type plumbrule.Rule
return {
  title = "Power of the array against the inverter's",
  cite = "common practice, no limit in the code",
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter, book)
    local ratio = inverter:array_power() / inverter.model.rated_power
    should.not_exceed("DC power over AC power", ratio, book.dc_ac_most)
    should.be_at_least("DC power over AC power, at the least", ratio, book.dc_ac_least)
  end,
  remedy = "Choose an inverter of another size.",
}

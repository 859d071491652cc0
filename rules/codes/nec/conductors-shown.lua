---@type plumbrule.Rule
-- What no circuit of the design carries, no other rule could judge.
return {
  title = "Conductors of every string, branch and inverter",
  cite = { ["2017"] = "690.8, 705.60", ["2020"] = "690.8, 705.28", ["2023"] = "690.8, 705.28" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local function is_carried(thing)
      for _, circuit in ipairs(design.circuits) do
        if not circuit.status:is("removed") and not circuit.role:is("feeder", "service") then
          for _, carried in ipairs(circuit.carries) do
            if same(carried:kind_of(), thing:kind_of()) and same(carried, thing) then return true end
          end
        end
      end
      return false
    end
    for _, string in ipairs(design.strings) do
      shall.be(format("A circuit carries string %s", string:called()), is_carried(string) or string.combiner and is_carried(string.combiner) or false)
    end
    for _, branch in ipairs(design.branches) do
      shall.be(format("A circuit carries branch %s", branch:called()), is_carried(branch))
    end
    for _, inverter in ipairs(design.inverters) do
      if inverter.status:is("new") then
        shall.be(format("A circuit carries the output of %s", inverter:called()), is_carried(inverter))
      end
    end
    shall.be_more_than("Strings and branches", design.strings:count() + design.branches:count(), 0)
  end,
  remedy = "Show the conductors of each string, branch and inverter among the circuits.",
}

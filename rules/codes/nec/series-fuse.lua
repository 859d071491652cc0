-- The circuits of the array that carry the string.
local function circuits_of(string, design)
  local list = {}
  for _, circuit in ipairs(design.circuits) do
    if not circuit.status:is("removed") and circuit.role:is("PV source") then
      for _, carried in ipairs(circuit.carries) do
        if same(carried:kind_of(), "string") and same(carried, string) then table.insert(list, circuit) end
      end
    end
  end
  return list
end

---@type plumbrule.Rule
-- A fuse that must be there protects the conductors, too (240.4): where none is needed they bear what can come back.
-- 2020 words it as two conditions that must both hold; 2017's exception comes to the same
-- (690.9(A) of 2017 and 2023 from memory).
return {
  title = "Overcurrent protection of strings in parallel",
  cite = { ["2017"] = "690.9(A) Exception, 690.9(B), 240.4", ["2020"] = "690.9(A)(1), 690.9(B), 240.4", ["2023"] = "690.9(A)(1), 690.9(B), 240.4" },
  about = "string",
  applies = function(string) return not string.has_converters end,
  check = function(string, book, design)
    local edition = tonumber(book:edition("nec"))
    if string.modules:count() < 1 then
      shall.be("The string has modules", false)
      return
    end
    local others = string:backfeed_current()
    local largest_fuse = string.modules[1].model.maximum_series_fuse -- of the weakest module
    for _, module in ipairs(string.modules) do
      largest_fuse = smallest(largest_fuse, module.model.maximum_series_fuse)
    end
    shall.meet_one_of {
      { "no device is needed", function()
          -- One that stands there all the same must be right.
          shall.be("There is none in the string", not string.fused)
          shall.not_exceed("125 % of short-circuit current of the strings in parallel, against the module's largest fuse",
            others, largest_fuse)
          local circuits = circuits_of(string, design)
          for _, circuit in ipairs(circuits) do
            shall.not_exceed("The same, against the ampacity of its conductors", others, circuit:usable_ampacity(edition))
          end
          shall.be_more_than("Source circuits that the design shows for it", #circuits, 0)
        end },
      { "a fuse in the string", function()
          shall.be("There is an overcurrent device in the string", string.fused)
          shall.be_at_least("Its rating", string.fuse, book.continuous_factor * string:source_current())
          shall.not_exceed("Its rating against the module's largest fuse", string.fuse, largest_fuse)
          for _, circuit in ipairs(circuits_of(string, design)) do
            if others > largest_fuse or others > circuit:usable_ampacity(edition) then
              shall.not_exceed(format("Its rating, against the largest that protects circuit %s", circuit:called()), string.fuse, circuit:largest_ocpd(edition))
            end
          end
        end },
    }
  end,
  remedy = "Give each of the parallel strings a fuse between 156.25 % of its short-circuit current and the module's largest, or feed fewer strings into one input.",
}

---@type plumbrule.Rule
-- 690.4(E) from memory.
return {
  title = "Place of an inverter",
  cite = "690.4(E), 240.24(D)",
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter)
    shall.be("Not in a bathroom", not inverter.location:is("bathroom"))
    shall.be("Not in a clothes closet", not inverter.location:is("clothes closet"))
  end,
  remedy = "Hang the inverter elsewhere.",
}

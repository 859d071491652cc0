---@type plumbrule.Rule
-- From memory: 690.4(E), and that (F) (2017: 705.70) lets it hang out of reach on roofs and elsewhere outside; how it
-- is then isolated is a rule of its own.
return {
  title = "Place of an inverter",
  cite = { ["2017"] = "690.4(E), 705.70, 240.24(D)", ["2020"] = "690.4(E), (F), 240.24(D)", ["2023"] = "690.4(E), (F), 240.24(D)" },
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter)
    shall.be("Not in a bathroom", not inverter.location:is("bathroom"))
    shall.be("Not in a clothes closet", not inverter.location:is("clothes closet"))
    if inverter.location:is("attic", "crawl space") then
      review("The code lets an inverter hang out of reach on roofs and outside, and does not name such a place indoors: the authority decides, with the way to it, its working space and the heat that the maker allows")
    end
  end,
  remedy = "Hang the inverter elsewhere.",
}

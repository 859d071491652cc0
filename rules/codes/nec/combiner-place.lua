---@type plumbrule.Rule
-- From memory. Fuses of PV circuits need not be in ready reach, so a roof or an attic will do (690.9(C)).
return {
  title = "Place of a combiner",
  cite = "690.4(E), 690.9(C), 240.24(D), (E), (F)",
  about = "combiner",
  check = function(combiner)
    shall.be("Not in a bathroom", not combiner.location:is("bathroom"))
    shall.be("Not in a clothes closet", not combiner.location:is("clothes closet"))
    shall.be("Not over the steps of a stairway", not combiner.location:is("stairway"))
  end,
  remedy = "Move the combiner.",
}

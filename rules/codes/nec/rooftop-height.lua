---@type plumbrule.Rule
-- Advice: below this height 33 °C come on top of the air's temperature (XHHW-2 is spared; 2023 of that
-- from memory). The ampacity itself is judged by circuit-ampacity.
return {
  title = "Height of a raceway above the roof",
  cite = { ["2017"] = "310.15(B)(3)(c)", ["2020"] = "310.15(B)(2)", ["2023"] = "310.15(B)(2)" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and circuit.on_roof and not circuit.wiring_method:is("free air", "trunk cable")
      and not circuit.insulation:is("XHHW-2")
  end,
  check = function(circuit, book)
    should.be_at_least("Height above the roof", circuit.height_above_roof, book.rooftop_height, inch)
  end,
  remedy = "Stand the raceway off the roof, and the adder for rooftop heat does not apply.",
}

-- A design without inverters makes one way a mistake of the rule: then the finding is open, whatever other ways say.
return {
  title = "Ways within ways",
  cite = "none",
  about = "roof_plane",
  check = function(plane, _, design)
    local inverter = design.inverters[1]
    local function slope() shall.not_exceed("Slope", plane.slope, 30 * deg, deg) end
    local function deck() shall.be_at_least("Deck", plane.deck_thickness, 0.5 * inch, inch) end
    should.not_exceed("Age", plane.age, 10 * year, year)
    should.be_more_than("Load", plane.dead_load, 8 * psf)
    should.be_less_than("Spacing", plane.framing.spacing, 24 * inch)
    should.be_equal("Covering", plane.covering, "composition shingle")
    should.be_at_least("Overhang", plane.eave_overhang, 12 * inch)
    should.be("No snow slides", not plane.sheds_onto_lower_roof)
    shall.meet_one_of {
      { "slope and deck", function()
          slope()
          deck()
        end },
      { "one of three", function()
          shall.meet_one_of {
            { "low", function() shall.be_less_than("Slope, low", plane.slope, 15 * deg) end },
            { "young", function() shall.be_less_than("Age, young", plane.age, 6 * year) end },
            { "somebody looks", function()
                shall.be_equal("Layers", plane.layers, 1)
                review("Somebody looks at layers and deck", plane.layers, plane.deck, plane)
              end },
          }
          shall.be_at_least("Spacing within the way", plane.framing.spacing, 16 * inch)
        end },
      { "what nobody may have told", function()
          shall.be_equal("Inverter", inverter.model.type, "string")
          shall.meet_one_of {
            { "heat", function() shall.not_exceed("Heat", design.site.design_high_temperature, celsius(35)) end },
            { "cold", function() shall.be_more_than("Cold", design.site.design_low_temperature, fahrenheit(10)) end },
          }
        end },
    }
    if plane.deck:is("boards") then review("Boards: for a person") end
  end,
}

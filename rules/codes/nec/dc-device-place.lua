---@type plumbrule.Rule
-- 2020 published; the sameness of 2023 from memory. 2017 says nothing of lengths.
return {
  title = "At how many ends a DC circuit is protected",
  cite = { ["2017"] = "690.9(A)", ["2020"] = "690.9(A)(3)", ["2023"] = "690.9(A)(3)" },
  about = "circuit",
  applies = function(circuit, book)
    return not circuit.status:is("removed") and circuit.role:is("PV source", "PV output", "converter output")
      and not circuit.ocpd:is("none") and not same(book:edition("nec"), "2017")
  end,
  check = function(circuit, book)
    shall.meet_one_of {
      { "both ends", function() shall.be_at_least("Ends that are protected", circuit.ocpd_ends, 2) end },
      { "short and outside", function()
          shall.be("It stays outside the building", not circuit.inside_building)
          shall.not_exceed("Length", circuit.length, book.one_end_length)
        end },
      { "short, inside, in a raceway", function()
          shall.be("It is in a raceway or metal-clad cable", not circuit.wiring_method:is("NM cable", "UF cable", "free air", "cable tray", "trunk cable"))
          shall.not_exceed("Length", circuit.length, book.one_end_length)
        end },
      { "long, but off the building", function()
          shall.be("It stays outside the building", not circuit.inside_building)
          shall.be("It is not on a roof", not circuit.on_roof)
          shall.be("It is in metal or underground", circuit.wiring_method:is("EMT", "RMC", "IMC", "MC cable", "underground raceway"))
          review("The inspector looks whether the device is within 10 ft of a disconnect, and that outside or nearest to where the conductors come in")
        end },
    }
  end,
  remedy = "Protect the circuit at both ends, or keep it within 10 ft.",
}

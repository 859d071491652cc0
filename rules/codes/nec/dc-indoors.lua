local function ends_inside(circuit)
  local to = circuit.to
  return to and same(to:kind_of(), "inverter") and not to.location:is("outside wall", "roof", "ground") or false
end

---@type plumbrule.Rule
-- 2017 and 2023 from memory. From 2020 circuits of at most 30 V and 8 A are spared.
return {
  title = "DC circuits inside the building",
  cite = { ["2017"] = "690.31(G)", ["2020"] = "690.31(D)", ["2023"] = "690.31(D)" },
  about = "circuit",
  applies = function(circuit)
    if circuit.status:is("removed") or not circuit.role:is("PV source", "PV output", "converter output") then return false end
    if circuit.inside_building then return true end
    -- Told to be outside, and yet with a length inside or at an inverter that is: where it is in metal, that does not matter.
    return not circuit.wiring_method:is("EMT", "RMC", "IMC", "FMC", "LFMC", "MC cable") and (circuit.length_inside > 0 * ft or ends_inside(circuit))
  end,
  check = function(circuit, book, design)
    local function in_metal()
      shall.be("In a metal raceway or metal-clad cable", circuit.wiring_method:is("EMT", "RMC", "IMC", "FMC", "LFMC", "MC cable"))
    end
    if same(book:edition("nec"), "2017") then
      in_metal()
      return
    end
    shall.meet_one_of {
      { "metal", in_metal },
      { "low voltage and current", function()
          shall.not_exceed("Voltage", circuit:largest_voltage(), book.small_dc_voltage)
          shall.not_exceed("Current", circuit:design_current(), book.small_dc_current)
        end },
      { "listed hazard control system", function()
          shall.be("The array is such a system", design.rapid_shutdown.method:is("hazard control system"))
          shall.be("Listed to UL 3741", design.rapid_shutdown.listings:has("UL 3741"))
        end },
    }
  end,
  remedy = "Run the circuit in a metal raceway from where it enters to the first disconnect.",
}

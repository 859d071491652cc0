-- A part of it, at the least. What lies in the ground is cooler than the air.
local function is_outside(circuit)
  return circuit.on_roof or not circuit.wiring_method:is("underground raceway", "UF cable")
    and (not circuit.inside_building or circuit.length_inside < circuit.length)
end

-- What begins at modules on a roof, and not wholly inside, has a part on that roof: told otherwise, its heat is forgotten.
local function leaves_the_roof_unseen(circuit, design)
  local from = circuit.from
  if circuit.on_roof or not from or not (same(from:kind_of(), "string") or same(from:kind_of(), "branch")) then return false end
  if circuit.inside_building and circuit.length_inside >= circuit.length then return false end
  return not design.racking.mounting:is("ground")
end

---@type plumbrule.Rule
-- The second of three: the current itself against the ampacity after ambient temperature, rooftop adder
-- and number of conductors. 690.8(A)(2) (2020) lets the input rating of the equipment stand for the
-- current where the device protects the conductors.
return {
  title = "Conductors where they run",
  cite = { ["2017"] = "690.8(B)(2), 310.15(B)", ["2020"] = "690.8(B)(2), 705.28(B), 310.15", ["2023"] = "690.8(B)(2), 705.28(B), 310.15" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed")
      and circuit.role:is("PV source", "PV output", "converter output", "inverter output", "microinverter branch", "combined branches", "supply-side")
  end,
  check = function(circuit, book, design)
    local edition = tonumber(book:edition("nec"))
    local ampacity = circuit:corrected_ampacity(edition)
    local function by_sources()
      shall.be_at_least("Ampacity after corrections, against the current", ampacity, circuit:design_current())
    end
    -- Within a degree it is the same figure, rounded or told in the other unit.
    if is_outside(circuit) and design.site.design_high_temperature - circuit.ambient_temperature >= 1 * delta_C then
      review(format("Outside it counts on %s of air, and the site has %s in the heat: the designer shows what keeps it cooler", circuit.ambient_temperature, design.site.design_high_temperature))
    end
    if leaves_the_roof_unseen(circuit, design) then
      review(format("It begins at %s, and is told not to run on a roof: the designer tells how it leaves the array, since a raceway low above a roof is hotter than the air", circuit.from:called()))
    end
    if edition < 2020 or not circuit.role:is("PV output", "converter output") or circuit.ocpd:is("none") then
      by_sources()
      return
    end
    shall.meet_one_of {
      { "current of what feeds it", by_sources },
      { "input rating of the equipment it feeds", function()
          local is_inverter = circuit.to and same(circuit.to:kind_of(), "inverter") or false
          shall.be("It ends at an inverter", is_inverter)
          if not is_inverter then return end
          shall.be_at_least("Ampacity after corrections, against the inverter's largest input current", ampacity, circuit.to.model.maximum_input_current)
          shall.not_exceed("Its overcurrent device", circuit.ocpd_rating, circuit:largest_ocpd(edition))
        end },
    }
  end,
  remedy = "Use a larger conductor, fewer conductors in the raceway, or a cooler way.",
}

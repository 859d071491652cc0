-- A conductor that goes to rods and plates alone, or to them and to one in concrete, need be no larger than this.
local function needed_for(electrodes, material, by_table)
  if electrodes:has("water pipe") or electrodes:has("building steel") or electrodes:has("ground ring") then return by_table end
  local most
  if not electrodes:has("concrete-encased") then
    most = material:is("aluminum") and "4 AWG" or "6 AWG"
  elseif material:is("copper") then
    most = "4 AWG"
  end
  if most and calc.conductor_area { size = by_table } > calc.conductor_area { size = most } then return most end
  return by_table
end

---@type plumbrule.Rule
-- That the disconnect of a connection on the supply side is tied to the electrodes as one of the service is, by the
-- size of the conductors that reach it (250.24(A), 250.66), and the relief of 250.66(A), (B): from memory.
return {
  title = "Grounding electrode conductor",
  cite = { ["2017"] = "690.47(A), 250.24(A), 250.66", ["2020"] = "690.47(A), 250.24(A), 250.66", ["2023"] = "690.47(A), 250.24(A), 250.66" },
  about = "grounding",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(grounding, _, design)
    shall.be("The PV system is tied to the building's electrodes", grounding.connected_to_building_system)
    shall.be_more_than("Electrodes of the building", grounding.electrodes:count(), 0)
    -- An electrode conductor that was there stays where the service stays.
    if not design.service.work:is("untouched") then
      local service = design.service
      local needed = calc.gec_size {
        service_size = service.conductor_size, service_material = service.conductor_material,
        material = grounding.gec_material, sets = service.parallel_sets,
      }
      needed = needed_for(grounding.electrodes, grounding.gec_material, needed)
      shall.be_at_least(format("Section in kcmil (%s is needed)", needed),
        calc.conductor_area { size = grounding.gec_size }, calc.conductor_area { size = needed })
    elseif design.interconnection.side:is("supply side") and design.interconnection.conductors then
      local tap = design.interconnection.conductors
      local needed = calc.gec_size {
        service_size = tap.conductor_size, service_material = tap.conductor_material,
        material = grounding.gec_material, sets = tap.parallel_sets,
      }
      needed = needed_for(grounding.electrodes, grounding.gec_material, needed)
      shall.be_at_least(format("Section in kcmil, for the disconnect on the supply side (%s is needed)", needed),
        calc.conductor_area { size = grounding.gec_size }, calc.conductor_area { size = needed })
    end
  end,
  remedy = "Tie the system to the building's electrodes with a conductor of the size that the service asks for.",
}

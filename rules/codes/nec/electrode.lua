---@type plumbrule.Rule
-- That the disconnect of a connection on the supply side is tied to the electrodes as one of the service is, by the
-- size of the conductors that reach it (250.24(A), 250.66): from memory.
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
      shall.be_at_least(format("Section in kcmil (%s is needed)", needed),
        calc.conductor_area { size = grounding.gec_size }, calc.conductor_area { size = needed })
    elseif design.interconnection.side:is("supply side") and design.interconnection.conductors then
      local tap = design.interconnection.conductors
      local needed = calc.gec_size {
        service_size = tap.conductor_size, service_material = tap.conductor_material,
        material = grounding.gec_material, sets = tap.parallel_sets,
      }
      shall.be_at_least(format("Section in kcmil, for the disconnect on the supply side (%s is needed)", needed),
        calc.conductor_area { size = grounding.gec_size }, calc.conductor_area { size = needed })
    end
  end,
  remedy = "Tie the system to the building's electrodes with a conductor of the size that the service asks for.",
}

-- What the sources behind a main give goes out through it.
local function goes_through_the_mains(design, book)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.is_service_panel then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          if breaker.duty:is("main") and not breaker.status:is("removed") then
            shall.be_at_least(format("Main breaker %s against %s %% of the sources behind it", breaker:called(), 100 * book.continuous_factor), breaker.rating, book.continuous_factor * bus:source_current())
          end
        end
      end
    end
  end
end

---@type plumbrule.Rule
-- What is told of the conductors' ampacity is believed up to the table's 75 °C column, that of usual service
-- terminals (110.14(C)(1)): their temperature on the way may only lower it.
return {
  title = "All sources against the service",
  cite = { ["2017"] = "705.12(A), 705.60(B)", ["2020"] = "705.11(A), 705.30, 310.16", ["2023"] = "705.11(A), 705.30, 310.16" },
  about = "service",
  check = function(service, book, design)
    -- The conductors are told twice where the design shows them as a circuit.
    for _, circuit in ipairs(design.circuits) do
      if circuit.role:is("service") and not circuit.status:is("removed")
        and calc.conductor_area { size = circuit.conductor_size } < calc.conductor_area { size = service.conductor_size } then
        review(format("Circuit %s is of %s, smaller than what is told of the service's conductors (%s): the designer tells which of the two is there", circuit:called(), circuit.conductor_size, service.conductor_size))
      elseif circuit.role:is("service") and not circuit.status:is("removed") and not same(circuit.conductor_material, service.conductor_material) then
        review(format("Circuit %s is of %s, and the service's conductors are told to be of %s: the designer tells which of the two is there", circuit:called(), circuit.conductor_material, service.conductor_material))
      elseif circuit.role:is("service") and not circuit.status:is("removed") and not circuit.ocpd:is("none") and not same(circuit.ocpd_rating, service.disconnect_rating) then
        review(format("Circuit %s is told to have a device of %s, and the service a disconnect of %s: the designer tells which of the two is there", circuit:called(), circuit.ocpd_rating, service.disconnect_rating))
      end
    end
    if service.phases > 1 then
      review(format("It has %d phases, and here all currents are added as if they were on one: the designer shows them phase by phase", service.phases))
    end
    if same(book:edition("nec"), "2017") then
      shall.not_exceed("Ratings of all source overcurrent devices", service:source_rating_sum(), service.rating)
    else
      local column = calc.terminal_ampacity {
        size = service.conductor_size, material = service.conductor_material,
        insulation = celsius(75), terminal = celsius(75), sets = service.parallel_sets,
      }
      if service.conductor_ampacity > column then
        should.not_exceed("Ampacity told of the service conductors, against the table", service.conductor_ampacity, column)
      end
      shall.not_exceed("Rated currents of all sources", service:source_current_sum(), smallest(service.conductor_ampacity, column))
    end
    goes_through_the_mains(design, book)
  end,
  remedy = "Fewer or smaller sources, or a larger service; tell the size of its conductors and what they carry.",
}

local function has_single_poles(panel)
  for _, bus in ipairs(panel.busbars) do
    for _, breaker in ipairs(bus.breakers) do
      if breaker.duty:is("load") and not breaker.status:is("removed") and breaker.poles < 2 then return true end
    end
  end
  return false
end

-- Does a panel at its end have loads of 120 V? It carries the panel, or, between a panel of branches and another, is its feeder.
local function feeds_single_poles(circuit, design)
  for _, carried in ipairs(circuit.carries) do
    if same(carried:kind_of(), "panel") and not carried.status:is("removed") and has_single_poles(carried) then return true end
  end
  if not circuit.role:is("combined branches", "inverter output", "microinverter branch") then return false end
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.feeder and same(panel.feeder, circuit) and has_single_poles(panel) then return true end
  end
  return false
end

---@type plumbrule.Rule
-- 2017 published (705.95(B); 250.24(C) with Table 250.102(C)(1), whose rows are those of 250.66 up to 1100 kcmil);
-- 215.2, 220.61 and the letters of 2020 and 2023 from memory.
return {
  title = "Neutral conductor",
  cite = { ["2017"] = "705.95, 215.2(A), 220.61, 250.24(C)", ["2020"] = "705.28(C), 215.2(A), 220.61, 250.24(C)", ["2023"] = "705.28(C), 215.2(A), 220.61, 250.24(C)" },
  about = "circuit",
  applies = function(circuit, _, design)
    return not circuit.status:is("removed") and not circuit.role:is("PV source", "PV output", "converter output")
      and (circuit.role:is("supply-side", "service") or not circuit.neutral:is("none")
        or feeds_single_poles(circuit, design))
  end,
  check = function(circuit, book, design)
    if circuit.neutral:is("none") and not circuit.role:is("supply-side", "service") then
      shall.be("A neutral goes to the panel, whose loads on one pole need it", false)
      return
    elseif circuit.neutral:is("none") then
      shall.be("Ahead of the service disconnect a neutral runs with it to every disconnect", false)
      return
    end
    local section = calc.conductor_area { size = circuit.neutral_size }
    local floor
    if circuit.role:is("supply-side", "service") then
      floor = calc.gec_size {
        service_size = circuit.conductor_size, service_material = circuit.conductor_material,
        material = circuit.conductor_material, sets = circuit.parallel_sets,
      }
    else
      floor = circuit:needed_egc(tonumber(book:edition("nec")))
    end
    local function is_large_enough_for_a_fault()
      shall.be_at_least(format("Section of the neutral in kcmil, against what a fault asks for (%s)", floor), section, calc.conductor_area { size = floor })
    end
    shall.meet_one_of {
      { "as large as the others", function()
          shall.be_at_least("Section of the neutral in kcmil, against the ungrounded conductors", section, calc.conductor_area { size = circuit.conductor_size })
        end },
      { "only for sensing", function()
          shall.be("It serves only for sensing or communication", circuit.neutral:is("sensing only"))
          if not circuit.role:is("supply-side", "service") then
            shall.be("No load behind it is on one pole", not feeds_single_poles(circuit, design))
          end
          shall.be("It is on the load side of the service disconnect", not circuit.role:is("supply-side", "service"))
          is_large_enough_for_a_fault()
        end },
      { "by its load", function()
          is_large_enough_for_a_fault()
          review("It is smaller than the ungrounded conductors: the designer shows the largest load between it and one of them")
        end },
    }
  end,
  remedy = "Pull a neutral as large as the ungrounded conductors, or show that it only senses, or its load.",
}

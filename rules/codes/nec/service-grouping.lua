-- The switches of the service: those on the list of disconnects, or the mains of its panels where those are more.
local function count_switches(design)
  local listed, mains = 0, 0
  for _, disconnect in ipairs(design.disconnects) do
    if disconnect.role:is("service") then listed = listed + disconnect.count end
  end
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.is_service_panel and not panel.main_lugs_only then
      mains = mains + largest(panel:mains(), 1)
    end
  end
  return largest(listed, mains)
end

-- From 2020 a panel may have one of them.
local function one_main_in_a_panel(design)
  for _, panel in ipairs(design.panels) do
    if panel.status:is("new") and panel.is_service_panel then
      shall.not_exceed(format("Mains in the new service panel %s (from 2020)", panel:called()), panel:mains(), 1)
    end
  end
end

---@type plumbrule.Rule
-- Six, and from 2020 an enclosure, compartment or panel for each: published by trade pages. A disconnect of sources on
-- the supply side counts by itself (from memory). No section says how near is grouped.
return {
  title = "Count and grouping of the service disconnects",
  cite = { ["2017"] = "230.71(A), 230.72(A)", ["2020"] = "230.71(A), (B), 230.72(A)", ["2023"] = "230.71(A), (B), 230.72(A)" },
  about = "service",
  check = function(_, book, design)
    local switches = count_switches(design)
    if switches < 1 then
      review("The design shows no service disconnect, neither on its list of disconnects nor as the main of a service panel: the designer tells what opens the service")
    else
      shall.not_exceed("Switches or breakers that disconnect the service", switches, book.service_disconnects)
    end
    if switches < 2 then return end
    local entries, place, is_apart = 0, nil, false
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("service") then
        entries = entries + 1
        if not place then place = disconnect.location end
        if not same(place, disconnect.location) then is_apart = true end
      end
    end
    if is_apart and design.building.dwelling_units > 1 then
      review("Service disconnects stand in several places: the inspector looks whether each dwelling unit has its own")
    elseif is_apart then
      shall.be("The service disconnects stand together", false)
    elseif not same(entries, 1) then
      review("How near to each other they stand is not told, and no section says how near is grouped: the inspector looks that they stand together")
    end
    if not same(book:edition("nec"), "2017") then
      one_main_in_a_panel(design)
      review("Each of several service disconnects has an enclosure, a compartment or a panel of its own (from 2020; what stood before may stay): the inspector looks at it")
    end
  end,
  remedy = "One service disconnect, or at most six that stand together, from 2020 each in an enclosure, compartment or panel of its own.",
}

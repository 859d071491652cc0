-- What stands by itself: an electrode that asks for no other one, two rods, a rod that was measured.
local function judge_electrodes(place, whose, book)
  local electrodes = place.electrodes
  if electrodes:has("concrete-encased") or electrodes:has("ground ring") or electrodes:has("building steel") then
    shall.be(format("%s: an electrode that asks for no other one", whose), true)
    return
  end
  local function names_them()
    shall.be(format("%s: a rod or plate is among its electrodes", whose), electrodes:has("ground rod") or electrodes:has("plate"))
  end
  shall.meet_one_of {
    { "several rods or plates", function()
        shall.be_at_least(format("%s: rods, pipes and plates", whose), place.rods, 2)
        names_them()
        shall.be_at_least(format("%s: distance between two of them", whose), place.rod_spacing, book.rod_spacing)
      end },
    { "one that was measured", function()
        shall.be_at_least(format("%s: rods, pipes and plates", whose), place.rods, 1)
        names_them()
        shall.not_exceed(format("%s: resistance of the one to earth", whose), place.rod_resistance, book.rod_resistance)
      end },
    { "one beside a water pipe", function()
        shall.be(format("%s: a water pipe in the ground", whose), electrodes:has("water pipe"))
        shall.be_at_least(format("%s: rods, pipes and plates", whose), place.rods, 1)
        names_them()
        review("A water pipe takes another electrode, and authorities differ on a rod that was not found good by itself: whether this one rod is enough is the authority's to decide")
      end },
  }
end

-- A detached building's panel that is new, or that a source feeds: an old one without is no work of this design.
local function is_looked_at(panel)
  if not panel.detached_building or panel.status:is("removed") then return false end
  if not panel.status:is("existing") then return true end
  for _, bus in ipairs(panel.busbars) do
    for _, breaker in ipairs(bus.breakers) do
      if breaker.duty:is("source") and not breaker.status:is("removed") then return true end
    end
  end
  return false
end

---@type plumbrule.Rule
-- Published by trade pages (250.53(A)(2), its exception and (D)(2), which are read in two ways where one rod stands
-- beside a water pipe); 250.53(A)(3), 250.32(A) and the building steel from memory. Electrodes that were there stay as
-- they are where the service stays, unless a disconnect ahead of it becomes service equipment, too.
return {
  title = "A lone rod, plate or water pipe as electrode",
  cite = "250.50, 250.53(A)(2), (A)(3), (D)(2), 250.32(A)",
  about = "design",
  applies = function(design)
    for _, panel in ipairs(design.panels) do
      if is_looked_at(panel) then return true end
    end
    return not design.service.work:is("untouched") or design.interconnection.side:is("supply side")
  end,
  check = function(design, book)
    if not design.service.work:is("untouched") or design.interconnection.side:is("supply side") then
      judge_electrodes(design.grounding, "Building of the service", book)
    end
    for _, panel in ipairs(design.panels) do
      if is_looked_at(panel) then
        if panel.own_electrodes then
          judge_electrodes(panel, format("Building of panel %s", panel:called()), book)
        else
          shall.be(format("Building of panel %s: electrodes of its own", panel:called()), false)
        end
      end
    end
  end,
  remedy = "Drive a second rod at least 6 ft from the first, or measure 25 Ω or less, or tie in a concrete-encased electrode.",
}

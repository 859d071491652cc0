-- Breakers of a panel without a main: all must be opened to open the building.
local function handles_in(panel)
  local handles = 0
  for _, bus in ipairs(panel.busbars) do
    for _, breaker in ipairs(bus.breakers) do
      if not breaker.duty:is("spare") and not breaker.status:is("removed") then handles = handles + 1 end
    end
  end
  return handles
end

local function is_disconnected(means, panel, book, edition)
  local handles = 0
  if means < 1 and panel.main_lugs_only then handles = handles_in(panel) end
  if handles > 0 and edition < 2023 then
    shall.not_exceed("Breakers that open the building together, none of them a main", handles, book.building_disconnects)
  elseif handles > 0 and handles <= book.building_disconnects and panel.status:is("existing") then
    review(format("It has no main, and its %d breakers open the building together, as editions before 2023 let up to six: the authority decides whether it may stay so", handles))
  else
    shall.be_at_least("Disconnects of the feeder at the building", means, 1)
  end
end

-- Old work may have no grounding conductor, its neutral bonded instead.
local function is_bonded_as_of_old(panel)
  return panel.status:is("existing") and panel.feeder.status:is("existing") and panel.neutral_bonded
end

---@type plumbrule.Rule
-- Sections from memory; up to six breakers in one panel as the disconnects (225.33(A)) for 2017 and 2020 published by
-- trade pages; that 2023 takes a main in each panel, and 250.32(B)(1) Exception 1 from memory.
return {
  title = "Feeder to another building",
  cite = "225.30, 225.31, 225.32, 225.33, 250.32",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") and panel.detached_building end,
  check = function(panel, book, design)
    local edition = tonumber(book:edition("nec"))
    shall.be("It is fed by one feeder that the design shows", not not panel.feeder)
    if not panel.feeder then return end
    local means = 0
    if not panel.main_lugs_only then means = means + panel:mains() end
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("equipment", "AC") and disconnect.of and same(disconnect.of:kind_of(), "panel") and same(disconnect.of, panel) then means = means + 1 end
    end
    is_disconnected(means, panel, book, edition)
    shall.be("The building has electrodes of its own", panel.own_electrodes)
    if is_bonded_as_of_old(panel) then
      review("Its neutral is bonded to ground, and feeder and panel were there before: that may stay where no grounding conductor and no metal path runs with the feeder and its neutral is large enough for a fault (250.32(B)(1) Exception 1), and the inspector looks at it")
    else
      local needed = panel.feeder:needed_egc(edition)
      shall.be_at_least(format("Section of the feeder's grounding conductor in kcmil (%s is needed)", needed),
        calc.conductor_area { size = panel.feeder.egc_size }, calc.conductor_area { size = needed })
      shall.be("Its neutral is kept apart from ground", not panel.neutral_bonded)
    end
  end,
  remedy = "Run a grounding conductor with the feeder, and give the building a disconnect and electrodes of its own.",
}

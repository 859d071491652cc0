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

local function is_of(disconnect, panel)
  return disconnect.role:is("equipment", "AC") and disconnect.of and same(disconnect.of:kind_of(), "panel") and same(disconnect.of, panel)
end

-- What opens the building stands at it, in reach, nearest to where the feeder comes in.
local function is_in_its_place(panel, disconnects, in_panel)
  local reached = 0
  if in_panel and panel.readily_accessible then reached = 1 end
  for _, disconnect in ipairs(disconnects) do
    if disconnect.readily_accessible then reached = reached + 1 end
    if not in_panel and not disconnect.within_sight then
      review(format("Disconnect %s is not within sight of the panel: the inspector looks whether it stands at this building", disconnect:called()))
    end
  end
  shall.be_more_than("Disconnects of the feeder that one can reach readily", reached, 0)
  if panel.status:is("existing") and panel.feeder.status:is("existing") then return end
  if panel.entrance_run > 0 * ft then
    review(format("The feeder runs %s inside the building before its disconnect, which is to be nearest to where it comes in: the authority decides how far is near", panel.entrance_run))
  end
end

-- New in 2023: a dwelling that a feeder serves has an emergency disconnect outside, in reach, as one with a service has.
local function has_emergency_disconnect(disconnects)
  local outside = 0
  for _, disconnect in ipairs(disconnects) do
    if disconnect.location:is("outside wall", "ground") and disconnect.readily_accessible then outside = outside + 1 end
  end
  shall.be_more_than("Disconnects outside that open the dwelling and that one can reach", outside, 0)
end

-- Old work may have no grounding conductor, its neutral bonded instead.
local function is_bonded_as_of_old(panel)
  return panel.status:is("existing") and panel.feeder.status:is("existing") and panel.neutral_bonded
end

---@type plumbrule.Rule
-- Sections from memory; up to six breakers in one panel as the disconnects (225.33(A)) for 2017 and 2020 published by
-- trade pages, so are the place of the disconnect (225.32; that 2023 has it in 225.31(B), from memory) and the emergency
-- disconnect of 2023 (225.41); that 2023 takes a main in each panel, and 250.32(B)(1) Exception 1 from memory.
return {
  title = "Feeder to another building",
  cite = { ["2017"] = "225.30, 225.31, 225.32, 225.33, 250.32", ["2020"] = "225.30, 225.31, 225.32, 225.33, 250.32", ["2023"] = "225.30, 225.31, 225.33, 225.41, 250.32" },
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") and panel.detached_building end,
  check = function(panel, book, design)
    local edition = tonumber(book:edition("nec"))
    shall.be("It is fed by one feeder that the design shows", not not panel.feeder)
    if not panel.feeder then return end
    local disconnects, mains = {}, 0
    if not panel.main_lugs_only then mains = panel:mains() end
    for _, disconnect in ipairs(design.disconnects) do
      if is_of(disconnect, panel) then table.insert(disconnects, disconnect) end
    end
    is_disconnected(mains + #disconnects, panel, book, edition)
    shall.be("The building has electrodes of its own", panel.own_electrodes)
    if is_bonded_as_of_old(panel) then
      review("Its neutral is bonded to ground, and feeder and panel were there before: that may stay where no grounding conductor and no metal path runs with the feeder and its neutral is large enough for a fault (250.32(B)(1) Exception 1), and the inspector looks at it")
    else
      local needed = panel.feeder:needed_egc(edition)
      shall.be_at_least(format("Section of the feeder's grounding conductor in kcmil (%s is needed)", needed),
        calc.conductor_area { size = panel.feeder.egc_size }, calc.conductor_area { size = needed })
      shall.be("Its neutral is kept apart from ground", not panel.neutral_bonded)
    end
    -- Last, so that what is untold of the place hides no fault.
    local in_panel = mains > 0 or #disconnects < 1
    is_in_its_place(panel, disconnects, in_panel)
    if edition >= 2023 and not panel.status:is("existing") and panel.dwelling then
      if in_panel and panel.location:is("outside wall", "ground") then
        shall.be("Its main outside opens the dwelling, and one can reach it", panel.readily_accessible)
      else
        has_emergency_disconnect(disconnects)
      end
    end
  end,
  remedy = "Run a grounding conductor with the feeder, and give the building electrodes of its own and a disconnect in reach where the feeder comes in.",
}

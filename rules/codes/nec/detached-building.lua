local function mains_in(panel)
  local mains = 0
  for _, bus in ipairs(panel.busbars) do
    for _, breaker in ipairs(bus.breakers) do
      if breaker.duty:is("main") and not breaker.status:is("removed") then mains = mains + 1 end
    end
  end
  return mains
end

---@type plumbrule.Rule
-- Sections from memory.
return {
  title = "Feeder to another building",
  cite = "225.30, 225.31, 225.32, 250.32",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") and panel.detached_building end,
  check = function(panel, book, design)
    local edition = tonumber(book:edition("nec"))
    shall.be("It is fed by one feeder that the design shows", not not panel.feeder)
    if not panel.feeder then return end
    local needed = panel.feeder:needed_egc(edition)
    shall.be_at_least(format("Section of the feeder's grounding conductor in kcmil (%s is needed)", needed),
      calc.conductor_area { size = panel.feeder.egc_size }, calc.conductor_area { size = needed })
    local means = 0
    if not panel.main_lugs_only then means = means + mains_in(panel) end
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("equipment", "AC") and disconnect.of and same(disconnect.of:kind_of(), "panel") and same(disconnect.of, panel) then means = means + 1 end
    end
    shall.be_at_least("Disconnects of the feeder at the building", means, 1)
    shall.be("The building has electrodes of its own", panel.own_electrodes)
    shall.be("Its neutral is kept apart from ground", not panel.neutral_bonded)
  end,
  remedy = "Run a grounding conductor with the feeder, and give the building a disconnect and electrodes of its own.",
}

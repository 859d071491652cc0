-- The panel at which it is: named itself, or its bus.
local function panel_at(connection, design)
  local at = connection.at
  if not at or same(at:kind_of(), "circuit") then return nil end
  if same(at:kind_of(), "panel") then return at end
  for _, panel in ipairs(design.panels) do
    for _, bus in ipairs(panel.busbars) do
      if same(bus, at) then return panel end
    end
  end
  return nil
end

local function takes_taps(panel)
  shall.be("The panel's maker allows taps", panel.taps_allowed)
  shall.be("The data sheet of the panel's model allows taps", panel.model.taps_allowed)
end

-- Where the meter and the service disconnect share an enclosure, a tap between the two is in it, whatever conductors
-- the design names.
local function inside_a_meter_main(design)
  for _, meter in ipairs(design.meters) do
    if meter.revenue and meter.meter_main then
      local shown = 0
      for _, panel in ipairs(design.panels) do
        if not panel.status:is("removed") and panel.is_service_panel then
          shown = shown + 1
          takes_taps(panel)
        end
      end
      if shown < 1 then
        review("The meter and the service disconnect are in one enclosure, which the design does not show as a panel: the inspector looks in the maker's instructions that taps in it are allowed")
      end
    end
  end
end

-- The least rating by how many circuits it serves. That of one or two circuits is written for limited loads: a person
-- decides whether sources count as such.
local function is_large_enough(disconnect, book, design)
  local circuits = design.branches:count()
  for _, inverter in ipairs(design.inverters) do
    if inverter.status:is("new") then circuits = circuits + 1 end
  end
  local least = book.other_disconnect_minimum
  if circuits < 2 then least = book.one_circuit_disconnect_minimum elseif circuits < 3 then least = book.two_circuit_disconnect_minimum end
  if disconnect.rating < book.other_disconnect_minimum and disconnect.rating >= least then
    review(format("Disconnect %s has %s, and a service disconnect in general %s: the authority decides whether it may be smaller for so few circuits", disconnect:called(), disconnect.rating, book.other_disconnect_minimum))
  else
    shall.be_at_least(format("Rating of disconnect %s as a service disconnect", disconnect:called()), disconnect.rating, least)
  end
end

---@type plumbrule.Rule
-- Letters of 705.11 and the sections of Article 230 from memory; that its disconnect is a service disconnect is
-- published for 2023, common reading before.
return {
  title = "Connection on the supply side: taps, disconnect, bonding",
  cite = { ["2017"] = "230.46, 230.66, 230.79, 250.24, 110.3(B)", ["2020"] = "705.11(D), (E), 230.46, 230.66, 230.79, 110.3(B)", ["2023"] = "705.11(D), (E), 230.46, 230.66, 230.79, 110.3(B)" },
  about = "interconnection",
  applies = function(connection) return connection.side:is("supply side") end,
  check = function(connection, book, design)
    shall.be("The taps are listed for it", connection.listed_taps)
    shall.be("The instructions of the tapped equipment allow it", connection.instructions_allow_taps)
    shall.be("The disconnect is bonded as service equipment", connection.bonded_as_service)
    local panel = panel_at(connection, design)
    if panel then takes_taps(panel) else inside_a_meter_main(design) end
    local switches = 0
    for _, disconnect in ipairs(design.disconnects) do
      local is_it = disconnect.role:is("PV system")
      if connection.disconnect then is_it = same(disconnect, connection.disconnect) end
      if is_it then
        switches = switches + 1
        shall.be(format("Disconnect %s is suitable as service equipment", disconnect:called()), disconnect.service_rated)
        shall.be(format("Disconnect %s is readily accessible", disconnect:called()), disconnect.readily_accessible)
        is_large_enough(disconnect, book, design)
      end
    end
    shall.be_more_than("Disconnects on the supply side", switches, 0)
  end,
  remedy = "Use listed tap connectors where the maker allows them, and a disconnect of 60 A or more that is rated as service equipment and bonded so.",
}

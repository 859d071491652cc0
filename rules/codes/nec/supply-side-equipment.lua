---@type plumbrule.Rule
-- Letters of 705.11 and the sections of Article 230 from memory.
return {
  title = "Connection on the supply side: taps, disconnect, bonding",
  cite = { ["2017"] = "230.46, 230.66, 250.24, 110.3(B)", ["2020"] = "705.11(D), (E), 230.46, 230.66, 110.3(B)", ["2023"] = "705.11(D), (E), 230.46, 230.66, 110.3(B)" },
  about = "interconnection",
  applies = function(connection) return connection.side:is("supply side") end,
  check = function(connection, _, design)
    shall.be("The taps are listed for it", connection.listed_taps)
    shall.be("The instructions of the tapped equipment allow it", connection.instructions_allow_taps)
    shall.be("The disconnect is bonded as service equipment", connection.bonded_as_service)
    if connection.at and same(connection.at:kind_of(), "panel") then
      shall.be("The panel's maker allows taps", connection.at.taps_allowed)
    end
    local switches = 0
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("PV system") then
        switches = switches + 1
        shall.be(format("Disconnect %s is suitable as service equipment", disconnect:called()), disconnect.service_rated)
      end
    end
    shall.be_more_than("Disconnects of the PV system", switches, 0)
  end,
  remedy = "Use listed tap connectors where the maker allows them, and a disconnect that is rated as service equipment and bonded so.",
}

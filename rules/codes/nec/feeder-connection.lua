---@type plumbrule.Rule
return {
  title = "Source connected along a feeder",
  cite = { ["2017"] = "705.12(B)(2)(1), 240.4", ["2020"] = "705.12(B)(1), 240.4", ["2023"] = "705.12(A)(1), (2), 240.4" },
  about = "interconnection",
  applies = function(connection) return connection.side:is("feeder") end,
  check = function(connection, book, design)
    local edition = tonumber(book:edition("nec"))
    local feeder = connection.at
    local is_shown = feeder and same(feeder:kind_of(), "circuit") or false
    shall.be("The connection is on a feeder that the design shows", is_shown)
    if not is_shown then return end
    -- What is told of the feeder is what protects it.
    for _, panel in ipairs(design.panels) do
      if not panel.status:is("removed") and panel.feeder and same(panel.feeder, feeder) then
        for _, breaker in ipairs(panel.breakers) do
          if not breaker.status:is("removed") then
            shall.be_equal(format("Device of the feeder, against breaker %s in the panel above", breaker:called()), feeder.ocpd_rating, breaker.rating)
          end
        end
      end
    end
    -- A small main at its end does not protect the feeder from the utility's side.
    shall.not_exceed("Device of the feeder against the largest that protects it", feeder.ocpd_rating, feeder:largest_ocpd(edition))
    shall.meet_one_of {
      { "the feeder carries both", function()
          shall.be_at_least("Ampacity of the feeder against its device plus 125 % of the sources", feeder:usable_ampacity(edition), feeder:feeder_need())
        end },
      { "a device on its load side", function()
          local devices = 0
          for _, panel in ipairs(design.panels) do
            if not panel.status:is("removed") and panel.feeder and same(panel.feeder:called(), feeder:called()) and not panel.main_lugs_only then
              for _, bus in ipairs(panel.busbars) do
                devices = devices + 1
                shall.not_exceed("Device at the end of the feeder", bus.protecting_device, feeder:usable_ampacity(edition))
              end
            end
          end
          shall.be_more_than("Devices at the end of the feeder", devices, 0)
        end },
    }
  end,
  remedy = "Use a larger feeder from the connection on, or a main breaker at its end that is not larger than its ampacity.",
}

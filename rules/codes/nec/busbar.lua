-- A place told as the far end, against the space: counted by rows or by numbers, the far end is beyond a third.
local function stand_far_from_the_feed(bus, design)
  for _, panel in ipairs(design.panels) do
    for _, other in ipairs(panel.busbars) do
      if same(bus, other) then
        for _, breaker in ipairs(bus.breakers) do
          if not breaker.status:is("removed") and not breaker.duty:is("main", "spare") and breaker:has_sources() then
            shall.be_at_least(format("Space of breaker %s, counted from the feed, against a third of the panel's", breaker:called()), breaker.position, panel.spaces / 3)
          end
        end
      end
    end
  end
end

---@type plumbrule.Rule
-- Center-fed in 2020 and 2023, and the engineered option, from memory.
return {
  title = "Busbar against the sum of its sources",
  cite = { ["2017"] = "705.12(B)(2)(3)", ["2020"] = "705.12(B)(3)", ["2023"] = "705.12(B)" },
  about = "busbar", -- one finding for each bus from the array up to the service
  applies = function(bus, _, design)
    for _, panel in ipairs(design.panels) do
      for _, other in ipairs(panel.busbars) do
        if same(bus, other) and panel.status:is("removed") then return false end
      end
    end
    return bus:has_sources()
  end,
  check = function(bus, book, design)
    local edition = tonumber(book:edition("nec"))
    -- The marked output current of every source that can feed this bus.
    local sources = book.continuous_factor * bus:source_current()
    shall.meet_one_of {
      { "sum of sources", function()
          shall.not_exceed("Protecting device plus 125 % of source current", bus.protecting_device + sources, bus.rating)
        end },
      { "120 % of the busbar", function()
          shall.be("The source breaker is at the end opposite the feed", same(bus:source_breaker_place(), "opposite end"))
          shall.be("The bus is fed at an end, not at its center", not bus.fed_at:is("center"))
          stand_far_from_the_feed(bus, design)
          shall.not_exceed("Protecting device plus 125 % of source current, against 120 % of the bus", bus.protecting_device + sources, book.busbar_share * bus.rating)
        end },
      { "sum of breakers", function()
          -- Named, since it stands and falls with a full list of breakers and a label that binds those to come.
          shall.be("The design names the sum of breakers", bus.methods:has("sum of breakers"))
          shall.not_exceed("All breakers but the main", bus:breaker_total(), bus.rating)
          shall.not_exceed("Protecting device", bus.protecting_device, bus.rating)
        end },
      { "120 % of a center-fed bus", function()
          shall.be("The bus is fed at its center", bus.fed_at:is("center"))
          shall.be("Sources are at one end only", not bus:sources_at_both_ends())
          shall.not_exceed("Protecting device plus 125 % of source current, against 120 % of the center-fed bus", bus.protecting_device + sources, book.busbar_share * bus.rating)
        end },
      { "feed-through conductors", function()
          shall.be("This edition knows the option (from 2020)", edition >= 2020)
          shall.be("Its feed-through lugs are in use", bus.feed_through)
          shall.be("The design names the option", bus.methods:has("feed-through conductors"))
          review("The conductors beyond the lugs and the device at their end decide")
        end },
      { "power control system", function()
          shall.be("This edition knows the option (from 2020)", edition >= 2020)
          shall.be("The design names a power control system", bus.methods:has("power control system"))
          shall.not_exceed("Protecting device plus the limit that the system holds", bus.protecting_device + bus.power_control_limit, bus.rating)
          review("The system's listing, its settings, and that it controls every source on this bus are to be looked at")
        end },
      { "engineered", function()
          shall.be("The design names engineering supervision", bus.methods:has("engineered"))
          review("An engineer's study of loads and fault currents decides")
        end },
    }
  end,
  remedy = "Lower the main breaker, move the source breaker to the end opposite the feed, choose a smaller inverter, connect on the supply side, or replace the panel by one with a larger bus.",
}

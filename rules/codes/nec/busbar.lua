-- The row of the last space that it takes: 1 and 2 are the first row, a pole more is a row more.
local function last_row(breaker) return round_up(breaker.position / 2) + breaker.poles - 1 end

local function is_odd(number) return round_down(number / 2) < number / 2 end

-- The breakers that are or will be on the bus, and whether sources are behind them.
local function breakers_on(bus)
  local all = {}
  for _, breaker in ipairs(bus.breakers) do
    if not breaker.status:is("removed") and not breaker.duty:is("main") then
      table.insert(all, { breaker = breaker, is_spare = breaker.duty:is("spare"), has_sources = breaker:has_sources() })
    end
  end
  return all
end

-- On its own side, the rows that other breakers with sources take between it and the far end.
local function rows_of_sources_beyond(all, breaker)
  local rows = 0
  for _, other in ipairs(all) do
    local position = other.has_sources and not other.is_spare and other.breaker.position
    if position and position > breaker.position and same(is_odd(position), is_odd(breaker.position)) then
      rows = rows + other.breaker.poles
    end
  end
  return rows
end

local function stands_at_the_far_end(breaker, all, panel)
  local row, rows = last_row(breaker), round_up(panel.spaces / 2)
  shall.be_more_than(format("Row of breaker %s, counted from the feed, against half of the panel's", breaker:called()), row, rows / 2)
  for _, other in ipairs(all) do
    if not other.has_sources then
      shall.not_exceed(format("Row of breaker %s, against that of the source breaker %s", other.breaker:called(), breaker:called()), last_row(other.breaker), row)
    end
  end
  if row + rows_of_sources_beyond(all, breaker) < rows then
    review(format("Breaker %s stands in row %d of %d, and the rows beyond it are empty: the inspector decides whether it counts as the far end, and that no load comes there", breaker:called(), row, rows))
  end
end

-- Breakers that stand there and feed nothing: the section speaks of all devices, for loads and for sources.
local function spare_ratings(bus)
  local sum = 0 * A
  for _, breaker in ipairs(bus.breakers) do
    if breaker.duty:is("spare") and not breaker.status:is("removed") then sum = sum + breaker.rating end
  end
  return sum
end

-- A place told as the far end, against the spaces.
local function stand_far_from_the_feed(bus, design)
  for _, panel in ipairs(design.panels) do
    for _, other in ipairs(panel.busbars) do
      if same(bus, other) and (panel.split_bus or panel.busbars:count() > 1) then
        review("The panel has several buses: the inspector looks at its diagram where the spaces of this one end")
      elseif same(bus, other) then
        local all = breakers_on(bus)
        for _, one in ipairs(all) do
          if one.has_sources and not one.is_spare then stands_at_the_far_end(one.breaker, all, panel) end
        end
      end
    end
  end
end

-- What is by its data sheet part of no such system is held by none.
local function out_of_control(bus, design)
  local names
  local function add(name) names = names and format("%s, %s", names, name) or name end
  for _, inverter in ipairs(design.inverters) do
    if not inverter.status:is("removed") and not inverter.model.power_control then add(inverter:called()) end
  end
  for _, branch in ipairs(design.branches) do
    if not branch.microinverter.power_control then add(branch:called()) end
  end
  if names then
    review(format("By its data sheet %s is part of no listed power control system: where it feeds %s, the designer shows what controls it", names, bus:called()))
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
    if bus.feed_through then
      review("Its feed-through lugs are in use: the designer shows what their conductors carry, the sources included, and what protects them")
    end
    shall.meet_one_of {
      { "sum of sources", function()
          shall.not_exceed(format("Protecting device plus %s %% of source current", 100 * book.continuous_factor), bus.protecting_device + sources, bus.rating)
        end },
      { "120 % of the busbar", function()
          shall.be("The source breaker is at the end opposite the feed", same(bus:source_breaker_place(), "opposite end"))
          shall.be("The bus is fed at an end, not at its center", not bus.fed_at:is("center"))
          stand_far_from_the_feed(bus, design)
          shall.not_exceed(format("Protecting device plus %s %% of source current, against %s %% of the bus", 100 * book.continuous_factor, 100 * book.busbar_share), bus.protecting_device + sources, book.busbar_share * bus.rating)
        end },
      { "sum of breakers", function()
          -- Named, since it stands and falls with a full list of breakers and a label that binds those to come.
          shall.be("The design names the sum of breakers", bus.methods:has("sum of breakers"))
          shall.not_exceed("All breakers but the main", bus:breaker_total(), bus.rating)
          shall.not_exceed("Protecting device", bus.protecting_device, bus.rating)
          local spare = spare_ratings(bus)
          if spare > 0 * A and bus:breaker_total() + spare > bus.rating then
            review(format("Spare breakers of %s together are left out of that sum, and with them it would exceed the bus: the inspector decides whether they stay", spare))
          end
        end },
      { "120 % of a center-fed bus", function()
          shall.be("The bus is fed at its center", bus.fed_at:is("center"))
          shall.be("Sources are at one end only", not bus:sources_at_both_ends())
          for _, breaker in ipairs(bus.breakers) do
            if not breaker.status:is("removed") and not breaker.duty:is("main", "spare") and breaker:has_sources() then
              shall.be(format("Breaker %s stands at an end", breaker:called()), not breaker.place:is("between"))
            end
          end
          shall.not_exceed(format("Protecting device plus %s %% of source current, against %s %% of the center-fed bus", 100 * book.continuous_factor, 100 * book.busbar_share), bus.protecting_device + sources, book.busbar_share * bus.rating)
        end },
      { "feed-through conductors", function()
          shall.be("This edition knows the option (from 2020)", edition >= 2020)
          shall.be("Its feed-through lugs are in use", bus.feed_through)
          shall.be("The design names the option", bus.methods:has("feed-through conductors"))
          review("The designer shows what protects the conductors beyond the lugs, what they carry with the sources, and the bus at their end: that decides")
        end },
      { "power control system", function()
          shall.be("This edition knows the option (from 2020)", edition >= 2020)
          shall.be("The design names a power control system", bus.methods:has("power control system"))
          shall.not_exceed("Protecting device plus the limit that the system holds", bus.protecting_device + bus.power_control_limit, bus.rating)
          review(format("The inspector looks at the system's listing, at its setting of %s, and that it controls every source on this bus", bus.power_control_limit))
          out_of_control(bus, design)
        end },
      { "engineered", function()
          shall.be("The design names engineering supervision", bus.methods:has("engineered"))
          review("An engineer's study of loads and fault currents decides: the authority asks for it, sealed where its law wants that")
        end },
    }
  end,
  remedy = "Lower the main breaker, move the source breaker to the end opposite the feed, choose a smaller inverter, connect on the supply side, or replace the panel by one with a larger bus.",
}

local function opens(disconnect, inverter)
  local of = disconnect.of
  return of and same(of:kind_of(), "inverter") and same(of, inverter)
end

-- A load-breaking disconnect elsewhere that a control beside the inverter opens.
local function opens_from_beside(disconnect, book)
  shall.be(format("A control beside it opens disconnect %s", disconnect:called()), disconnect.remote_control)
  if not disconnect.remote_control then return end
  shall.be(format("Disconnect %s breaks its load", disconnect:called()), disconnect.load_break)
  shall.not_exceed(format("Distance of the control of disconnect %s", disconnect:called()), disconnect.control_distance, book.isolation_distance)
end

-- From memory: 2023 may take a switch out of sight that can be locked open. No published page says so.
local function locks_open(disconnect)
  shall.be(format("Disconnect %s can be locked open", disconnect:called()), disconnect.lockable)
  if not disconnect.lockable then return end
  review(format("Disconnect %s is not in sight within 10 ft, and can be locked open: 2023 may take that for isolation, and the authority decides", disconnect:called()))
end

local function dc_disconnects(inverter, design)
  local list = {}
  for _, disconnect in ipairs(design.disconnects) do
    if disconnect.role:is("DC") and opens(disconnect, inverter) then table.insert(list, disconnect) end
  end
  return list
end

---@type plumbrule.Rule
-- 10 ft, and operation from there: 2020 published; 2017 and 2023 from memory. That it holds for the AC side of an inverter, too: from memory.
-- Of several AC disconnects one near it is enough.
return {
  title = "Isolation of the inverter",
  cite = { ["2017"] = "690.15(A)", ["2020"] = "690.15(A)", ["2023"] = "690.15(A)" },
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter, book, design)
    local is_2023 = same(book:edition("nec"), "2023")
    local dc_ways = {
      { "in the inverter", function() shall.be("A DC disconnect is built in", inverter.model.dc_disconnect) end },
      { "beside it", function()
          local beside = 0
          for _, disconnect in ipairs(dc_disconnects(inverter, design)) do
            beside = beside + 1
            shall.be("It is within sight", disconnect.within_sight)
            shall.not_exceed("Its distance", disconnect.distance, book.isolation_distance)
          end
          shall.be_more_than("Disconnects of its DC side", beside, 0)
        end },
      { "opened from beside it", function()
          local elsewhere = 0
          for _, disconnect in ipairs(dc_disconnects(inverter, design)) do
            elsewhere = elsewhere + 1
            opens_from_beside(disconnect, book)
          end
          shall.be_more_than("Disconnects of its DC side that are operated from beside it", elsewhere, 0)
        end },
    }
    if is_2023 then
      dc_ways[4] = { "locked open elsewhere", function()
          local locked = 0
          for _, disconnect in ipairs(dc_disconnects(inverter, design)) do
            locked = locked + 1
            locks_open(disconnect)
          end
          shall.be_more_than("Disconnects of its DC side that can be locked open", locked, 0)
        end }
    end
    shall.meet_one_of(dc_ways)
    local ways = { { "AC in the inverter", function() shall.be("An AC disconnect is built in", inverter.model.ac_disconnect) end } }
    local count = 1
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("AC", "PV system", "utility", "equipment") and opens(disconnect, inverter) and count < 40 then
        count = count + 1
        ways[count] = { "AC beside it", function()
            shall.be(format("Disconnect %s is within sight", disconnect:called()), disconnect.within_sight)
            shall.not_exceed(format("Distance of disconnect %s", disconnect:called()), disconnect.distance, book.isolation_distance)
          end }
        count = count + 1
        ways[count] = { "AC opened from beside it", function() opens_from_beside(disconnect, book) end }
        if is_2023 then
          count = count + 1
          ways[count] = { "AC locked open elsewhere", function() locks_open(disconnect) end }
        end
      end
    end
    if count < 2 then
      ways[2] = { "AC beside it", function()
          if inverter.breakers:count() > 0 then
            review("No disconnect of its AC side is told, only its breaker: the inspector looks whether that is in sight of the inverter within 10 ft")
          else
            shall.be_more_than("Disconnects of its AC side", 0, 0)
          end
        end }
    end
    shall.meet_one_of(ways)
  end,
  remedy = "Use an inverter with built-in disconnects, or put one of its DC and one of its AC side in sight within 10 ft.",
}

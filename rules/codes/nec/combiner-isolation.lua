local function is_its_own(disconnect, combiner)
  return disconnect.role:is("DC", "equipment") and disconnect.of and same(disconnect.of:kind_of(), "combiner") and same(disconnect.of, combiner)
end

-- From memory: 2023 may take a switch out of sight that can be locked open. No published page says so.
local function locks_open(disconnect, breaks_load)
  if breaks_load then shall.be(format("Disconnect %s breaks its load", disconnect:called()), disconnect.load_break) end
  shall.be(format("Disconnect %s can be locked open", disconnect:called()), disconnect.lockable)
  if not disconnect.lockable then return end
  review(format("Disconnect %s is not in sight within 10 ft, and can be locked open: 2023 may take that for isolation, and the authority decides", disconnect:called()))
end

---@type plumbrule.Rule
-- Fuses are isolated like other equipment; above 30 A of output by what breaks the load. 2020 published; 2017, 2023 and
-- that a finger-safe holder isolates from memory.
return {
  title = "Isolation of a combiner",
  cite = "690.15(A), (B), (D)",
  about = "combiner",
  check = function(combiner, book, design)
    local amperes = 0 * A
    for _, string in ipairs(combiner.strings) do amperes = amperes + string:source_current() end
    local breaks_load = amperes > book.isolator_current
    local ways = { { "in the combiner", function()
        if breaks_load then
          shall.not_exceed("Output current, of a combiner without a switch that breaks it", amperes, book.isolator_current)
        else
          shall.be("What isolates its fuses is in it", not combiner.isolation:is("none"))
        end
      end } }
    if breaks_load and combiner.isolation:is("load-break switch") then
      ways[1][2] = function() shall.be("A switch in it breaks its load", true) end
    end
    local count = 1
    for _, disconnect in ipairs(design.disconnects) do
      if is_its_own(disconnect, combiner) and count < 40 then
        count = count + 1
        ways[count] = { "beside it", function()
            if breaks_load then shall.be(format("Disconnect %s breaks its load", disconnect:called()), disconnect.load_break) end
            shall.be(format("Disconnect %s is within sight", disconnect:called()), disconnect.within_sight)
            shall.not_exceed(format("Distance of disconnect %s", disconnect:called()), disconnect.distance, book.isolation_distance)
          end }
        count = count + 1
        ways[count] = { "opened from beside it", function()
            shall.be(format("A control beside it opens disconnect %s", disconnect:called()), disconnect.remote_control)
            if not disconnect.remote_control then return end
            shall.be(format("Disconnect %s breaks its load", disconnect:called()), disconnect.load_break)
            shall.not_exceed(format("Distance of the control of disconnect %s", disconnect:called()), disconnect.control_distance, book.isolation_distance)
          end }
        if same(book:edition("nec"), "2023") then
          count = count + 1
          ways[count] = { "locked open elsewhere", function() locks_open(disconnect, breaks_load) end }
        end
      end
    end
    if count < 2 then
      ways[2] = { "beside it", function() shall.be_more_than("Disconnects of the combiner", 0, 0) end }
    end
    shall.meet_one_of(ways)
  end,
  remedy = "Use a combiner with a switch or finger-safe holders (above 30 A a switch that breaks its load), or put a disconnect in sight within 10 ft.",
}

---@type plumbrule.Rule
-- 10 ft: 2020 published; 2017 and 2023 from memory.
return {
  title = "Isolation of the inverter",
  cite = { ["2017"] = "690.15(A)", ["2020"] = "690.15(A)", ["2023"] = "690.15(A)" },
  about = "inverter",
  applies = function(inverter) return not inverter.status:is("removed") end,
  check = function(inverter, book, design)
    shall.meet_one_of {
      { "in the inverter", function() shall.be("A DC disconnect is built in", inverter.model.dc_disconnect) end },
      { "beside it", function()
          local beside = 0
          for _, disconnect in ipairs(design.disconnects) do
            if disconnect.role:is("DC", "equipment") and disconnect.of and same(disconnect.of:called(), inverter:called()) then
              beside = beside + 1
              shall.be("It is within sight", disconnect.within_sight)
              shall.not_exceed("Its distance", disconnect.distance, book.isolation_distance)
            end
          end
          shall.be_more_than("Disconnects of its DC side", beside, 0)
        end },
    }
  end,
  remedy = "Use an inverter with a built-in DC disconnect, or put one in sight within 10 ft.",
}

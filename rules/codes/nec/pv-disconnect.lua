---@type plumbrule.Rule
-- Doors: from 2020, above 30 V where others can reach it. That it can be locked open: 2020 published by a trade page,
-- 2017 and 2023 from memory.
return {
  title = "Disconnect of the PV system",
  cite = { ["2017"] = "690.13(A), (D), (F)", ["2020"] = "690.13(A), (C), (E)", ["2023"] = "690.13(A), (C), (E)" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local switches, place, is_apart = 0, nil, false
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("PV system") then
        switches = switches + disconnect.count
        if not place then place = disconnect.location end
        if not same(place, disconnect.location) then is_apart = true end
        shall.be(format("Disconnect %s is readily accessible", disconnect:called()), disconnect.readily_accessible)
        shall.be(format("Disconnect %s breaks its load", disconnect:called()), disconnect.load_break)
        shall.be(format("Disconnect %s can be locked open", disconnect:called()), disconnect.lockable)
        if not same(book:edition("nec"), "2017") then
          shall.be(format("The door of disconnect %s locks or needs a tool", disconnect:called()), disconnect.locked_or_tool)
        end
      end
    end
    shall.be_at_least("Switches or breakers that disconnect the PV system", switches, 1)
    -- Those of one system stand together; a system of its own may have its own elsewhere.
    if is_apart then review("They stand in several places: the authority decides whether each disconnects a system of its own") end
    if switches > 0 then
      for _, inverter in ipairs(design.inverters) do
        if inverter.status:is("new") then
          shall.be(format("One of them disconnects %s", inverter:called()), inverter:opened_by("PV system"))
        end
      end
      for _, branch in ipairs(design.branches) do
        shall.be(format("One of them disconnects %s", branch:called()), branch:opened_by("PV system"))
      end
    end
    shall.not_exceed("Switches or breakers that disconnect the PV system, at the most", switches, book.pv_disconnects)
  end,
  remedy = "Name the switch or breaker, lockable, that takes every inverter and branch off all other wiring; at most six in one place.",
}

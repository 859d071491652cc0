-- A service panel, or one that it feeds by way of others.
local function is_behind_service(panel)
  for _ = 1, 20 do
    if panel.is_service_panel then return true end
    local from = panel.fed_from
    if not from or not same(from:kind_of(), "panel") then return false end
    panel = from
  end
  return false
end

-- What is connected ahead of the service disconnect is on no breaker behind it, too.
local function one_way_only(conductors, design)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and is_behind_service(panel) then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          for _, carried in ipairs(breaker.serves and not breaker.status:is("removed") and conductors.carries or {}) do
            local is_it = same(carried:kind_of(), breaker.serves:kind_of()) and same(carried, breaker.serves)
            if is_it then shall.be(format("%s is on the supply side alone, not on breaker %s", carried:called(), breaker:called()), false) end
          end
        end
      end
    end
  end
end

-- The interconnection tells of one connection: what else reaches the supply side has the same floor, and the rest of
-- it is a person's.
local function judge_others(conductors, edition, design)
  for _, other in ipairs(design.circuits) do
    if not other.status:is("removed") and other.role:is("supply-side") and not same(other, conductors) then
      local to = other.to
      local goes_on = not to or same(to:kind_of(), "disconnect") or same(to:kind_of(), "circuit") and to.role:is("supply-side")
      if not goes_on then
        local _, meets_floor = other:supply_side_need(edition)
        if edition >= 2020 then
          shall.be(format("Circuit %s, too: at least 6 AWG copper or 4 AWG aluminum", other:called()), meets_floor)
        end
        review(format("Circuit %s reaches the supply side, too, and the interconnection tells of %s alone: the designer tells the place of its device, its taps, its disconnect and its bonding as well", other:called(), conductors:called()))
      end
    end
  end
end

---@type plumbrule.Rule
-- 250.102(C) from memory. 2017 has no floor for the size. 690.8 and Article 230 size it there; that 230.42(B) has service
-- conductors carry what 230.79 asks of their disconnect, from memory.
return {
  title = "Connection on the supply side: conductors",
  cite = { ["2017"] = "705.12(A), 690.8(B), 230.42(B), 230.82(6), 250.102(C)", ["2020"] = "705.11(B), 230.82(6), 250.102(C)", ["2023"] = "705.11(B), 230.82(6), 250.102(C)" },
  about = "interconnection",
  applies = function(connection) return connection.side:is("supply side") end,
  check = function(connection, book, design)
    local edition = tonumber(book:edition("nec"))
    local conductors = connection.conductors
    shall.be("The design shows its conductors", not not conductors)
    if not conductors then return end
    one_way_only(conductors, design)
    judge_others(conductors, edition, design)
    local _, meets_floor = conductors:supply_side_need(edition)
    local needed, percent = book.continuous_factor * conductors:design_current(), 100 * book.continuous_factor
    shall.be_at_least(format("Ampacity of the conductors against %s %% of the sources", percent), conductors:usable_ampacity(edition), needed)
    shall.be_at_least(format("Overcurrent device against %s %% of the sources", percent), connection.ocpd_rating, needed)
    if not conductors.ocpd:is("none") and not same(connection.ocpd_rating, conductors.ocpd_rating) then
      shall.be_equal("Overcurrent device at the connection, against the one told of its conductors", connection.ocpd_rating, conductors.ocpd_rating)
    end
    shall.not_exceed("Overcurrent device against the largest that protects the conductors", connection.ocpd_rating, conductors:largest_ocpd(edition))
    -- A metal raceway bonds what it joins; elsewhere a jumper does, sized as 250.102(C)(1) has it up to 1100 kcmil.
    if not conductors.wiring_method:is("EMT", "RMC", "IMC") then
      local jumper = calc.gec_size {
        service_size = conductors.conductor_size, service_material = conductors.conductor_material,
        material = conductors.egc_material, sets = conductors.parallel_sets,
      }
      shall.be_at_least(format("Section of the supply-side bonding jumper in kcmil (%s is needed)", jumper),
        calc.conductor_area { size = conductors.egc_size }, calc.conductor_area { size = jumper })
    end
    if edition < 2020 and conductors:usable_ampacity(edition) < book.other_disconnect_minimum then
      review(format("They carry %s, and a service disconnect is in general one of %s, which service conductors are to carry (230.42(B)): the authority decides whether that holds for these", conductors:usable_ampacity(edition), book.other_disconnect_minimum))
    elseif edition >= 2020 then
      shall.be("Conductors of at least 6 AWG copper or 4 AWG aluminum", meets_floor)
    end
  end,
  remedy = "Use larger conductors and the overcurrent device that belongs to them.",
}

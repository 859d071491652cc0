local function is_on(breaker, from)
  local buses = { from }
  if same(from:kind_of(), "panel") then buses = from.busbars end
  for _, bus in ipairs(buses) do
    for _, one in ipairs(bus.breakers) do
      if same(one, breaker) then return true end
    end
  end
  return false
end

-- What feeds it is not taken out, and is the panel that has the breaker for it.
local function stays_fed(panel)
  for _, breaker in ipairs(panel.breakers) do
    if not breaker.status:is("removed") and not (panel.fed_from and is_on(breaker, panel.fed_from)) then
      shall.be(format("Breaker %s, which serves it, is in the panel that is told to feed it", breaker:called()), false)
    end
  end
  if panel.feeder and panel.feeder.status:is("removed") then
    shall.be(format("Its feeder %s stays", panel.feeder:called()), false)
  end
  local from = panel.fed_from
  if from and same(from:kind_of(), "panel") and from.status:is("removed") then
    shall.be(format("Panel %s, which feeds it, stays", from:called()), false)
  end
end

---@type plumbrule.Rule
-- 230.90 from memory.
-- The bus rules rest on this figure, so it must be that of a device that is there.
return {
  title = "The device that protects a bus",
  cite = "408.36, 230.90",
  about = "panel",
  applies = function(panel) return not panel.status:is("removed") end,
  check = function(panel, _, design)
    if panel.busbars:count() < 1 then shall.be("It has a bus", false) end
    if not panel.is_service_panel then stays_fed(panel) end
    for _, bus in ipairs(panel.busbars) do
      local mains = 0
      for _, breaker in ipairs(bus.breakers) do
        if breaker.duty:is("main") and not breaker.status:is("removed") then
          mains = mains + 1
          if panel.is_service_panel then
            shall.be_equal("Protecting device, against the main breaker", bus.protecting_device, breaker.rating)
            -- On one pole the other ungrounded conductor would have no device and no disconnect.
            if design.service.voltage > design.service.voltage_to_ground then
              shall.be_at_least("Poles of the main breaker, one for each ungrounded conductor", breaker.poles, 2)
            elseif breaker.poles < 2 and not same(design.service.voltage, 120 * V) then
              review(format("The main breaker is on one pole, and the service is told to have %s between conductors and to ground alike: the utility says whether its other conductor is grounded, else two poles are needed", design.service.voltage))
            end
            -- The service conductors are judged against the disconnect: a larger main would stand unjudged.
            shall.not_exceed("Main breaker, against the service disconnect", breaker.rating, design.service.disconnect_rating)
          elseif not panel.feeder then
            shall.be("The design shows the feeder that supplies it", false)
          else
            if panel.feeder.nominal_voltage > design.service.voltage_to_ground then
              shall.be_at_least("Poles of its main breaker, one for each ungrounded conductor", breaker.poles, 2)
            end
            shall.be_at_least("Protecting device, against the smaller of main and feeder", bus.protecting_device, smallest(breaker.rating, panel.feeder.ocpd_rating))
          end
        end
      end
      if mains < 1 and panel.feeder then
        shall.be_equal("Protecting device, against the feeder's", bus.protecting_device, panel.feeder.ocpd_rating)
      elseif mains < 1 then
        review(format("Neither a main breaker nor a feeder is told that protects bus %s: the designer shows what does, and its rating", bus:called()))
      end
    end
  end,
  remedy = "Tell the rating of the device that protects the bus, and the device itself.",
}

---@type plumbrule.Rule
return {
  title = "Uplift on the attachments",
  cite = "29.4.4 (7-10: 30.4), 2.4; NDS 12.2, 12.4.1",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 and plane.attachments:count() > 0 end,
  check = function(plane, book, design)
    local edition, speed = book:edition("asce"), book.basic_wind_speed
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    local dead = design:array_dead_load()
    local worst = {} -- by place: away from the edges, and at them
    for _, attachment in ipairs(plane.attachments) do
      local area = attachment:tributary_area()
      if area > 0 * sq_ft then
        local wind_up, wind_down, zone = attachment:wind_pressure(edition, speed, book.panel_wind_minimum)
        local up, _, _, along = calc.asd_combinations {
          edition = edition, dead = dead, wind_uplift = wind_up, wind_down = wind_down,
          snow = 0 * psf, roof_live = 0 * psf, slope = plane.slope,
        }
        local capacity = attachment:uplift_capacity { load_duration = "wind", safety_factor = book.test_safety_factor }
        local place = 2
        if same(zone, "1") or same(zone, "1'") then place = 1 end
        local found = { attachment = attachment, zone = zone, load = up * area, shear = along * area, capacity = capacity }
        local last = worst[place]
        if not last or found.load * last.capacity > last.load * capacity then worst[place] = found end
      end
    end
    for place = 1, 2 do
      local found = worst[place]
      if found then
        local name = format("%s in zone %s", found.attachment:called(), found.zone)
        shall.not_exceed(format("Uplift on %s", name), found.load, found.capacity, lbf)
        if found.load > 0 * lbf and found.capacity > 0 * lbf then
          local lateral = found.attachment:lateral_capacity { load_duration = "wind", safety_factor = book.test_safety_factor }
          local capacity, load = calc.combined_capacity {
            withdrawal = found.capacity, lateral = lateral, tension = found.load, shear = found.shear }
          shall.not_exceed(format("Uplift and load along the slope together on %s", name), load, capacity, lbf)
        end
        if design.racking.mounting:is("rails", "shared rails") then
          shall.not_exceed(format("Uplift of the rail from %s", name), found.load, design.racking.model.connection_uplift, lbf)
        end
      end
    end
    if not worst[1] and not worst[2] then shall.be("Some attachment carries modules", false) end
  end,
  remedy = "Add attachments where the load is highest, take longer or more fasteners, or keep the array out of the edge zones.",
}

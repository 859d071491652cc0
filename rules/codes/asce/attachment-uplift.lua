---@type plumbrule.Rule
return {
  title = "Uplift on the attachments",
  cite = "29.4.4 (7-10: 30.4), 2.4; NDS 12.2, 12.3.1, 12.4.1",
  about = "roof_plane",
  applies = function(plane, book)
    return plane.modules:count() > 0 and plane.attachments:count() > 0 and plane:has_wind(book:edition("asce"))
  end,
  check = function(plane, book, design)
    local edition, speed = book:edition("asce"), book.basic_wind_speed
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    local dead = plane:array_dead_load()
    local joint, joint_holds -- what joins the array to its attachments: all that lifts one goes through it
    if design.racking.mounting:is("rails", "shared rails") then
      joint, joint_holds = "rail connection", design.racking.model.connection_uplift
    elseif design.racking.mounting:is("rail-less", "seam clamps") then
      joint, joint_holds = "module clamp", design.racking.model.clamp_uplift
    end
    local alike = {} -- what attachments of one model on one kind of member hold

    local function hold(attachment)
      local name = format("%s on %s", attachment.model:called(), attachment.stands_on)
      if not alike[name] then
        local given = { load_duration = "wind", safety_factor = book.test_safety_factor }
        local up, up_by, mount, fasteners = attachment:uplift_capacity(given)
        given.push = "along the slope"
        local along, along_by = attachment:lateral_capacity(given)
        local least, least_by, others = calc.weakest_part {
          capacity = up, governs = up_by, mount = mount, fasteners = fasteners, joint = joint, joint_holds = joint_holds }
        if up <= 0 * lbf then least_by = format("%s, whose thread is too short in the wood to count,", least_by) end
        if others then least_by = format("%s (%s)", least_by, others) end
        local both_by = up_by
        if not same(up_by, along_by) then both_by = format("%s and its %s", up_by, along_by) end
        alike[name] = { least = least, least_by = least_by, up = up, along = along, both_by = both_by }
      end
      return alike[name]
    end

    -- The share of NDS 12.4.1 that both loads take together, squared: load² over capacity².
    local function strain(load, shear, held)
      if held.up <= 0 * lbf or held.along <= 0 * lbf then return 1e9 end
      local share = load * load / held.up + shear * shear / held.along
      return share * share / (load * load + shear * shear)
    end

    local worst = { {}, {} } -- by place: away from the edges, and at them
    local any = false
    for _, attachment in ipairs(plane.attachments) do
      local area = attachment:tributary_area()
      if area > 0 * sq_ft then
        any = true
        local wind_up, wind_down, zone = attachment:wind_pressure(edition, speed, book.panel_wind_minimum)
        local up, _, _, along = calc.asd_combinations {
          edition = edition, dead = dead, wind_uplift = wind_up, wind_down = wind_down,
          snow = 0 * psf, roof_live = 0 * psf, slope = plane.slope,
        }
        local place = worst[2]
        if same(zone, "1") or same(zone, "1'") then place = worst[1] end
        local found = { name = format("%s in zone %s", attachment:called(), zone), load = up * area, shear = along * area, held = hold(attachment) }
        local last = place.lifted
        if not last or found.load * last.held.least > last.load * found.held.least then place.lifted = found end
        if found.load > 0 * lbf then
          found.strain = strain(found.load, found.shear, found.held)
          if not place.both or found.strain > place.both.strain * (1 + 1e-9) then place.both = found end
        end
      end
    end
    for _, place in ipairs(worst) do
      local lifted, both = place.lifted, place.both
      if lifted then
        shall.not_exceed(format("Uplift on %s, held least by its %s", lifted.name, lifted.held.least_by), lifted.load, lifted.held.least, lbf)
        if both and both.held.up > 0 * lbf then
          local capacity, load = calc.combined_capacity {
            withdrawal = both.held.up, lateral = both.held.along, tension = both.load, shear = both.shear }
          shall.not_exceed(format("Uplift and load along the slope together on %s, held by its %s", both.name, both.held.both_by), load, capacity, lbf)
        end
      end
    end
    if not any then shall.be("Some attachment carries modules", false) end
  end,
  remedy = "Add attachments where the load is highest, strengthen the part that holds least, or keep the array out of the edge zones; asce/clamp-uplift judges each module clamp, asce/rafters the member below.",
}

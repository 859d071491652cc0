---@type plumbrule.Rule
return {
  title = "Load down and along the slope on the attachments",
  cite = "Chapter 7, 29.4.4 (7-10: 30.4), 2.4; NDS 12.3.1, 2.3.2",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 and plane.attachments:count() > 0 end,
  check = function(plane, book, design)
    local edition, basis, safety = book:edition("asce"), tostring(book.ground_snow_basis), book.test_safety_factor
    local speed, ground_snow = book.basic_wind_speed, book.ground_snow_load
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    local dead, has_wind = plane:array_dead_load(), plane:has_wind(edition)
    local snow = plane:snow_load(edition, basis, ground_snow, book.roof_snow_minimum)
    local joint, joint_holds -- what pushes an attachment along the slope comes through it
    if design.racking.mounting:is("rails", "shared rails") then
      joint, joint_holds = "rail connection across its rail", design.racking.model.connection_across_rail
      if design.racking.rail_direction:is("up the slope") then
        joint, joint_holds = "rail connection along its rail", design.racking.model.connection_along_rail
      end
    end

    -- The least of fasteners, mount and joint, and what the others hold.
    local function find_least(capacity, governs, mount, fasteners)
      local least, by, others = calc.weakest_part {
        capacity = capacity, governs = governs, mount = mount, fasteners = fasteners, joint = joint, joint_holds = joint_holds }
      if capacity <= 0 * lbf then by = format("%s, too short in the wood to count,", by) end
      if others then by = format("%s (%s)", by, others) end
      return least, by
    end

    local function judge(load_of_snow, name, reach)
      local under = ""
      if same(name, "drifted snow") then under = " under drifted snow" end
      local alike, sorts = {}, {} -- attachments of one model on one kind of member hold alike
      for _, attachment in ipairs(plane.attachments) do
        local area = attachment:tributary_area()
        if area > 0 * sq_ft and (not reach or attachment:below_ridge() < reach) then
          local wind_up, wind_down = 0 * psf, 0 * psf -- where it is not known, asce/array-wind says why
          if has_wind then wind_up, wind_down = attachment:wind_pressure(edition, speed, book.panel_wind_minimum) end
          local _, down, along = calc.asd_combinations {
            edition = edition, dead = dead, wind_uplift = wind_up, wind_down = wind_down, snow = load_of_snow,
            roof_live = 0 * psf, slope = plane.slope,
          }
          local sort_name = format("%s on %s", attachment.model:called(), attachment.stands_on)
          local sort = alike[sort_name]
          if not sort then
            sort = { down = -1 * lbf, along = -1 * lbf }
            alike[sort_name] = sort
            table.insert(sorts, sort)
          end
          if down * area > sort.down then sort.down, sort.down_at = down * area, attachment end
          if along * area > sort.along then
            sort.along, sort.weight, sort.along_at = along * area, dead * sin(plane.slope) * area, attachment
          end
        end
      end
      if not sorts[1] then
        if reach then return end -- snow drifts above the array alone
        shall.be("Some attachment carries modules", false)
        return
      end
      local down, along -- those that come nearest to what they hold
      local function nearer(last, load, capacity, says)
        if last and load * last.capacity <= last.load * capacity then return last end
        return { load = load, capacity = capacity, says = says }
      end
      for _, sort in ipairs(sorts) do
        down = nearer(down, sort.down, sort.down_at:down_capacity { safety_factor = safety }, format("Load down on %s%s, held by its mount", sort.down_at:called(), under))
        -- Wood carries less for long: a little snow may count for less than the weight alone.
        local at = sort.along_at
        local least, by = find_least(at:lateral_capacity { load_duration = "dead", push = "along the slope", safety_factor = safety })
        along = nearer(along, sort.weight, least, format("Load along the slope on %s by its weight, held least by its %s", at:called(), by))
        if load_of_snow > 0 * psf then
          least, by = find_least(at:lateral_capacity { load_duration = "snow", push = "along the slope", safety_factor = safety })
          along = nearer(along, sort.along, least, format("Load along the slope on %s under %s, held least by its %s", at:called(), name, by))
        end
      end
      shall.not_exceed(down.says, down.load, down.capacity, lbf)
      shall.not_exceed(along.says, along.load, along.capacity, lbf)
    end

    judge(snow, "snow")
    if not has_wind then review("Wind is left out here (asce/array-wind tells why): what stands without it may not stand under it") end
    if ground_snow > book.unbalanced_snow_from then
      local drifted, _, needed, reach = plane:drifted_snow(edition, basis, ground_snow)
      if needed and drifted > snow then judge(drifted, "drifted snow", reach) end
    end
  end,
  remedy = "Add attachments, or take a mount or screws that hold more; what the screws hold rests on the metal of the mount's base and its thickness.",
}

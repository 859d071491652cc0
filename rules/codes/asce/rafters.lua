---@type plumbrule.Rule
return {
  title = "Rafters without and with the array",
  cite = "2.4, Chapter 7, 29.4.4 and 30.3 (7-10: 30.4); NDS 3.3, 3.4, 3.5",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 and plane.attachments:count() > 0 end,
  check = function(plane, book, design)
    local edition, basis, ground_snow = book:edition("asce"), tostring(book.ground_snow_basis), book.ground_snow_load
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    local framing = plane.framing
    local dead = plane.dead_load / cos(plane.slope) -- per area of plan, as live load and snow are
    local snow = plane:snow_load(edition, basis, ground_snow, book.roof_snow_minimum)
    -- Snow of a strength-level map counts seven tenths beside allowable stresses.
    if same(basis, "strength level") then snow = 0.7 * snow end
    local live, array = book.roof_live_load, plane:array_dead_load()
    local bend_share = book.rafter_deflection -- the span over what it may bend
    if framing.ceiling_attached or plane.slope <= book.rafter_deflection_slope then bend_share = book.rafter_deflection_ceiling end

    -- Jack rafters are judged as if they were as long as the others: bent more than they are.
    local jacks, told = "", ""
    if plane:has_edge("hip") or plane:has_edge("valley") then
      jacks, told = " (full span)", ", shorter rafters at a hip or valley taken at the full span," -- said at length once
    end

    local has_wind = plane:has_wind(edition) -- else asce/array-wind says why

    local function compare(name, load, duration, drift, reach)
      local stress, allowed = framing:bending { load = load, load_duration = duration, drift = drift, reach = reach }
      shall.not_exceed(format("Bending stress without the array under %s%s", name, told), stress, allowed, psi)
      told = jacks
      local shear, shear_allowed = framing:shear { load = load, load_duration = duration, drift = drift, reach = reach }
      shall.not_exceed(format("Shear stress without the array under %s%s", name, jacks), shear, shear_allowed, psi)
    end
    compare("live load", dead + live, "roof live")
    shall.not_exceed(format("Deflection without the array%s", jacks), framing:deflection(largest(live, snow), bend_share), framing.span / bend_share, inch)
    if snow > 0 * psf then compare("snow", dead + snow, "snow") end

    local speed = book.basic_wind_speed
    if book.site_wind_study then speed = design.site.basic_wind_speed end

    local function blow_on_roof()
      -- Wind presses square to the slope: over the sloping length that bends as 1/cos² of it in plan. The
      -- combinations with wind last as short as each other, so that the larger load governs among them.
      local wind = framing:wind_down(edition, speed, book.panel_wind_minimum) / (cos(plane.slope) * cos(plane.slope))
      local name, load = "wind, D + 0.6W", 0.6 * wind
      if 0.45 * wind + 0.75 * live > load then name, load = "wind and live load, D + 0.75(0.6W) + 0.75Lr", 0.45 * wind + 0.75 * live end
      if 0.45 * wind + 0.75 * snow > load then name, load = "wind and snow, D + 0.75(0.6W) + 0.75S", 0.45 * wind + 0.75 * snow end
      compare(name, dead + load, "wind")
    end
    if has_wind then blow_on_roof() end

    local _, outside = framing:array_share()
    if outside > 0 then
      review(format("%d attachments stand on the eave's overhang, past the wall: the tails of the rafters, often notched over it, are not judged here", outside))
    end

    local function compare_with(name, roof_load, array_load, duration, drift, reach)
      local stress, allowed, _, shear, shear_allowed = framing:under_array {
        roof_load = roof_load, array_load = array_load, load_duration = duration, drift = drift, reach = reach }
      shall.not_exceed(format("Bending stress with the array under %s%s", name, jacks), stress, allowed, psi)
      shall.not_exceed(format("Shear stress with the array under %s%s", name, jacks), shear, shear_allowed, psi)
    end
    -- Where the modules lie close to the roof nobody walks there.
    if design.racking.gap_below_modules > book.live_load_gap then
      compare_with("live load", dead + live, array, "roof live")
    end
    if snow > 0 * psf then
      compare_with("snow on the roof", dead + snow, array, "snow")
      compare_with("snow on the modules, through their attachments", dead, array + snow * cos(plane.slope), "snow")
      local _, _, _, _, _, sag = framing:under_array { roof_load = 0 * psf, array_load = snow * cos(plane.slope), load_duration = "snow" }
      shall.not_exceed(format("Deflection with snow on the modules%s", jacks), sag, framing.span / bend_share, inch)
    else
      compare_with("its own weight", dead, array, "dead")
    end
    local function blow_on_array()
      local on_array = plane:array_wind_down(edition, speed, book.panel_wind_minimum) / cos(plane.slope)
      local name, load = "wind, D + 0.6W", 0.6 * on_array
      local with_snow = 0.45 * on_array + 0.75 * snow * cos(plane.slope)
      if with_snow > load then name, load = "wind and snow, D + 0.75(0.6W) + 0.75S", with_snow end
      compare_with(format("%s, through the attachments", name), dead, array + load, "wind")
      if design.racking.gap_below_modules > book.live_load_gap then
        compare_with("wind and live load, D + 0.75(0.6W) + 0.75Lr", dead + 0.75 * live, array + 0.45 * on_array, "wind")
      end
      -- A member may be looked at for deflection under 0.42 of the wind on components (IBC Table 1604.3, from memory).
      local swayed = 0.42 * on_array
      if swayed > snow * cos(plane.slope) then
        local _, _, _, _, _, sag = framing:under_array { roof_load = 0 * psf, array_load = swayed, load_duration = "wind" }
        shall.not_exceed(format("Deflection with wind on the modules%s", jacks), sag, framing.span / bend_share, inch)
      end

      -- Wind that lifts the array pulls at the member below each attachment and presses its lower edge.
      local lifted, held, _, lift_shear, lift_held = framing:under_uplift {
        edition = edition, speed = speed, roof_dead = dead, array_dead = array, minimum = book.panel_wind_minimum }
      shall.not_exceed(format("Bending stress with the array under uplift, 0.6D + 0.6W%s", jacks), lifted, held, psi)
      shall.not_exceed(format("Shear stress with the array under uplift, 0.6D + 0.6W%s", jacks), lift_shear, lift_held, psi)
    end
    if has_wind then
      blow_on_array()
    else
      review("Wind is left out here (asce/array-wind tells why): what stands without it may not stand under it")
    end

    if ground_snow > book.unbalanced_snow_from then
      local drifted, _, needed, reach = plane:drifted_snow(edition, basis, ground_snow)
      if needed and drifted > snow then
        local drift = drifted - snow -- near the ridge, on top of what lies everywhere
        compare("drifted snow", dead + snow, "snow", drift, reach)
        compare_with("drifted snow on the modules, through their attachments", dead, array + snow * cos(plane.slope), "snow", drift * cos(plane.slope), reach)
      end
    end
  end,
  remedy = "Stagger the attachments so that each rafter takes its share, strengthen the rafters or hold their lower edge, or have an engineer look.",
}

---@type plumbrule.Rule
return {
  title = "Computed wind and snow on the modules",
  cite = "29.4.4 (7-10: 30.4), Chapter 7, 2.4",
  about = "module_model",
  applies = function(model, book, design)
    for _, module in ipairs(design.modules) do
      if same(module.model, model) and not module.status:is("removed") and module.plane:has_wind(book:edition("asce")) then return true end
    end
    return false
  end,
  check = function(model, book, design)
    local edition, basis = book:edition("asce"), tostring(book.ground_snow_basis)
    local speed, ground_snow = book.basic_wind_speed, book.ground_snow_load
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    -- A test load is 1.5 times the design load that it stands for.
    local share = 1
    if model.rating_basis:is("test") then share = 1 / 1.5 end
    local left_out -- the first plane on which wind is not known
    local most_up, most_down, up_at, down_at = -1000 * psf, -1000 * psf, "", ""
    for _, module in ipairs(design.modules) do
      local is_such = same(module.model, model) and not module.status:is("removed")
      if is_such and not module.plane:has_wind(edition) then
        left_out = left_out or module.plane
      elseif is_such then
        local wind_up, wind_down, zone, _, exposed = module:wind_pressure(edition, speed, book.panel_wind_minimum)
        local up, down = calc.asd_combinations {
          edition = edition, wind_uplift = wind_up, wind_down = wind_down, roof_live = 0 * psf, slope = module.plane.slope,
          dead = calc.dead_load_per_area { weight = model.weight, area = module:area() },
          snow = module.plane:snow_load(edition, basis, ground_snow, book.roof_snow_minimum),
        }
        local at = format("%s in zone %s", module:called(), zone)
        if exposed then at = format("%s in zone %s, at an exposed edge", module:called(), zone) end
        if up > most_up then most_up, up_at = up, at end
        if down > most_down then most_down, down_at = down, at end
      end
    end
    if left_out then
      review(format("Wind is left out here for the modules on %s (asce/array-wind tells why): they are not judged", left_out:called()))
    end
    shall.not_exceed(format("Net uplift on %s", up_at), most_up, share * model.uplift_rating, psf)
    shall.not_exceed(format("Downward load on %s", down_at), most_down, share * model.down_rating, psf)

    if ground_snow > book.unbalanced_snow_from then
      local pressed, pressed_at = most_down, nil
      for _, module in ipairs(design.modules) do
        if same(module.model, model) and not module.status:is("removed") and module.plane:has_wind(edition) then
          local drifted, _, needed, reach = module.plane:drifted_snow(edition, basis, ground_snow)
          if needed and module:below_ridge() < reach then
            local wind_up, wind_down = module:wind_pressure(edition, speed, book.panel_wind_minimum)
            local _, down = calc.asd_combinations {
              edition = edition, wind_uplift = wind_up, wind_down = wind_down, roof_live = 0 * psf, slope = module.plane.slope,
              dead = calc.dead_load_per_area { weight = model.weight, area = module:area() }, snow = drifted,
            }
            if down > pressed then pressed, pressed_at = down, module end
          end
        end
      end
      if pressed_at then
        shall.not_exceed(format("Downward load under drifted snow on %s", pressed_at:called()), pressed, share * model.down_rating, psf)
      end
    end
  end,
  remedy = "Keep modules out of the corner zones, choose a stronger module, or clamp it where its maker rates it higher.",
}

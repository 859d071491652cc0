---@type plumbrule.Rule
return {
  title = "Uplift on the module clamps",
  cite = "29.4.4 (7-10: 30.4), 2.4; the maker's clamp",
  about = "racking",
  applies = function(racking) return racking.mounting:is("rails", "shared rails", "rail-less") end,
  check = function(racking, book, design)
    local edition, speed = book:edition("asce"), book.basic_wind_speed
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    local most, most_at = -1 * lbf, nil
    for _, module in ipairs(design.modules) do
      if not module.status:is("removed") then
        local wind_up, wind_down = module:wind_pressure(edition, speed, book.panel_wind_minimum)
        local up = calc.asd_combinations {
          edition = edition, wind_uplift = wind_up, wind_down = wind_down, snow = 0 * psf, roof_live = 0 * psf,
          slope = module.plane.slope, dead = calc.dead_load_per_area { weight = module.model.weight, area = module:area() },
        }
        -- A clamp between two modules takes half of each on its rail.
        local load = up * module:area() / racking.rails_per_module
        if load > most then most, most_at = load, module end
      end
    end
    if not most_at then
      shall.be("Some module is clamped", false)
      return
    end
    shall.not_exceed(format("Uplift on a clamp beside %s", most_at:called()), most, racking.model.clamp_uplift, lbf)
  end,
  remedy = "Add a rail below each module, or use clamps rated for more.",
}

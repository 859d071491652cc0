---@type plumbrule.Rule
return {
  title = "Load down and along the slope on the attachments",
  cite = "Chapter 7, 29.4.4 (7-10: 30.4), 2.4",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 and plane.attachments:count() > 0 end,
  check = function(plane, book, design)
    local edition, basis = book:edition("asce"), tostring(book.ground_snow_basis)
    local speed, ground_snow = book.basic_wind_speed, book.ground_snow_load
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    local dead = design:array_dead_load()
    local snow = plane:snow_load(edition, basis, ground_snow, book.roof_snow_minimum)
    local most_down, most_along = -1 * lbf, -1 * lbf
    local down_at, along_at
    for _, attachment in ipairs(plane.attachments) do
      local area = attachment:tributary_area()
      if area > 0 * sq_ft then
        local wind_up, wind_down = attachment:wind_pressure(edition, speed, book.panel_wind_minimum)
        local _, down, along = calc.asd_combinations {
          edition = edition, dead = dead, wind_uplift = wind_up, wind_down = wind_down, snow = snow,
          roof_live = 0 * psf, slope = plane.slope,
        }
        if down * area > most_down then most_down, down_at = down * area, attachment end
        if along * area > most_along then most_along, along_at = along * area, attachment end
      end
    end
    if not down_at or not along_at then
      shall.be("Some attachment carries modules", false)
      return
    end
    shall.not_exceed(format("Load down on %s", down_at:called()), most_down, down_at:down_capacity { safety_factor = book.test_safety_factor }, lbf)
    shall.not_exceed(format("Load along the slope on %s", along_at:called()), most_along,
      along_at:lateral_capacity { load_duration = "snow", safety_factor = book.test_safety_factor }, lbf)
  end,
  remedy = "Add attachments or choose a stronger mount.",
}

---@type plumbrule.Rule
return {
  title = "Span and cantilever of the rails",
  cite = "the maker's table of spans; 29.4.4 (7-10: 30.4), Chapter 7, 2.4",
  about = "rail",
  check = function(rail, book, design)
    if rail.attachments:count() < 1 then
      shall.be("Attachments carry the rail", false)
      return
    end
    local edition, basis = book:edition("asce"), tostring(book.ground_snow_basis)
    local speed, ground_snow = book.basic_wind_speed, book.ground_snow_load
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    local plane, model = rail.plane, design.racking.model
    local dead = design:array_dead_load()
    local snow = plane:snow_load(edition, basis, ground_snow, book.roof_snow_minimum)
    local most_up, most_down, is_loaded = 0 * psf, 0 * psf, false
    for _, attachment in ipairs(rail.attachments) do
      if attachment:tributary_area() > 0 * sq_ft then
        local wind_up, wind_down = attachment:wind_pressure(edition, speed, book.panel_wind_minimum)
        local up, down = calc.asd_combinations {
          edition = edition, dead = dead, wind_uplift = wind_up, wind_down = wind_down, snow = snow,
          roof_live = 0 * psf, slope = plane.slope,
        }
        is_loaded = true
        most_up, most_down = largest(most_up, up), largest(most_down, down)
      end
    end
    if not is_loaded then
      review("No module lies on the rail: it is drawn in the wrong place, or not needed")
      return
    end
    local span, cantilever, up_listed, down_listed = 0 * inch, 0 * inch, 0 * psf, 0 * psf
    for _, row in ipairs(model.spans) do
      up_listed, down_listed = largest(up_listed, row.uplift), largest(down_listed, row.down)
      if row.uplift >= most_up and row.down >= most_down and row.span > span then
        span, cantilever = row.span, row.cantilever
      end
    end
    if span > 0 * inch then
      shall.not_exceed(format("Largest span, for %.1f psf up and %.1f psf down,", most_up / (1 * psf), most_down / (1 * psf)), rail:largest_span(), span, inch)
      shall.not_exceed("Cantilever past the last attachment", rail:cantilever(), cantilever, inch)
    else
      shall.not_exceed("Net uplift against the last row of the maker's table", most_up, up_listed, psf)
      shall.not_exceed("Downward load against the last row of the maker's table", most_down, down_listed, psf)
      review("No single row of the maker's table holds for both loads: ask the maker", most_up, most_down)
    end
  end,
  remedy = "Set attachments closer together, or choose a stronger rail.",
}

-- What the array puts on a rail at the worst of its attachments; nothing where no module lies on it.
local function loads_on(rail, book, dead, snow, drifted, reach, speed)
  local edition, most_up, most_down = book:edition("asce"), 0 * psf, 0 * psf
  local is_loaded = false
  for _, attachment in ipairs(rail.attachments) do
    if attachment:tributary_area() > 0 * sq_ft then
      local wind_up, wind_down = attachment:wind_pressure(edition, speed, book.panel_wind_minimum)
      local lies = snow
      if drifted and attachment:below_ridge() < reach then lies = drifted end
      local up, down = calc.asd_combinations {
        edition = edition, dead = dead, wind_uplift = wind_up, wind_down = wind_down, snow = lies,
        roof_live = 0 * psf, slope = rail.plane.slope,
      }
      is_loaded = true
      most_up, most_down = largest(most_up, up), largest(most_down, down)
    end
  end
  if is_loaded then return most_up, most_down end
end

-- The longest row of the maker's table that holds for both loads.
local function row_for(model, up, down)
  local longest
  for _, row in ipairs(model.spans) do
    if row.uplift >= up and row.down >= down and (not longest or row.span > longest.span) then longest = row end
  end
  return longest
end

local function says_of(what, rail, up, down, under)
  return format("%s of rail %s, for %.1f psf up and %.1f psf down%s,", what, rail:called(), up / (1 * psf), down / (1 * psf), under)
end

-- The rail of those whose length comes nearest to what it may be.
local function nearer(last, is, limit, says)
  if last and is * last.limit <= last.is * limit then return last end
  return { is = is, limit = limit, says = says }
end

local function beyond_table(rail, model, up, down, under)
  local most_up, most_down = 0 * psf, 0 * psf
  for _, row in ipairs(model.spans) do
    most_up, most_down = largest(most_up, row.uplift), largest(most_down, row.down)
  end
  shall.not_exceed(format("Net uplift on rail %s against the last row of the maker's table", rail:called()), up, most_up, psf)
  shall.not_exceed(format("Downward load on rail %s%s against the last row of the maker's table", rail:called(), under), down, most_down, psf)
  review("No single row of the maker's table holds for both loads: ask the maker", up, down)
end

---@type plumbrule.Rule
return {
  title = "Span and cantilever of the rails",
  cite = "the maker's table of spans; 29.4.4 (7-10: 30.4), Chapter 7, 2.4",
  about = "roof_plane",
  applies = function(plane, book)
    return plane.rails:count() > 0 and (plane.modules:count() < 1 or plane:has_wind(book:edition("asce")))
  end,
  check = function(plane, book, design)
    local basis, model = tostring(book.ground_snow_basis), design.racking.model
    local speed, ground_snow = book.basic_wind_speed, book.ground_snow_load
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    local dead = plane:array_dead_load()
    local snow = plane:snow_load(book:edition("asce"), basis, ground_snow, book.roof_snow_minimum)
    local function judge(under, drifted, reach)
      local bare, empty, beyond, span, cantilever
      for _, rail in ipairs(plane.rails) do
        if rail.attachments:count() < 1 then
          bare = bare or rail
        else
          local up, down = loads_on(rail, book, dead, snow, drifted, reach, speed)
          local row = up and row_for(model, up, down)
          if not up then
            empty = empty or rail
          elseif row then
            span = nearer(span, rail:largest_span(), row.span, says_of("Largest span", rail, up, down, under))
            cantilever = nearer(cantilever, rail:cantilever(), row.cantilever, says_of("Cantilever past the last attachment", rail, up, down, under))
          elseif not beyond or up > beyond.up or down > beyond.down then
            beyond = { rail = rail, up = up, down = down }
          end
        end
      end
      if bare then shall.be(format("Attachments carry rail %s", bare:called()), false) end
      if empty then review(format("No module lies on rail %s: it is drawn in the wrong place, or not needed", empty:called())) end
      if beyond then beyond_table(beyond.rail, model, beyond.up, beyond.down, under) end
      if span then
        shall.not_exceed(span.says, span.is, span.limit, inch)
        shall.not_exceed(cantilever.says, cantilever.is, cantilever.limit, inch)
      end
    end

    judge("")
    if ground_snow > book.unbalanced_snow_from then
      local drifted, _, needed, reach = plane:drifted_snow(book:edition("asce"), basis, ground_snow)
      if needed and drifted > snow then judge(" under drifted snow", drifted, reach) end
    end
  end,
  remedy = "Set attachments closer together, or choose a stronger rail.",
}

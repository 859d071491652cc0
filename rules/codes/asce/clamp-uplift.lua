-- Is the wind on none of the modules known? Then asce/array-wind says so.
local function is_unknown(book, design)
  local found = false
  for _, module in ipairs(design.modules) do
    if not module.status:is("removed") then
      if module.plane:has_wind(book:edition("asce")) then return false end
      found = true
    end
  end
  return found
end

---@type plumbrule.Rule
return {
  title = "Uplift on the module clamps",
  cite = "29.4.4 (7-10: 30.4), 2.4; the maker's clamp",
  about = "racking",
  applies = function(racking, book, design)
    if not racking.mounting:is("rails", "shared rails", "rail-less", "seam clamps") then return false end
    return not is_unknown(book, design)
  end,
  check = function(racking, book, design)
    local edition, speed = book:edition("asce"), book.basic_wind_speed
    if book.site_wind_study then speed = design.site.basic_wind_speed end
    local rails = racking.rails_per_module
    local most, push, most_at, at = -1 * lbf, 0 * lbf, nil, ""
    local left_out -- the first plane on which wind is not known
    local judged = {} -- modules of one model on one plane are lifted alike in one zone
    for _, module in ipairs(design.modules) do
      local is_new = not module.status:is("removed")
      if is_new and not module.plane:has_wind(edition) then
        left_out = left_out or module.plane
      elseif is_new then
        local _, _, zone, _, exposed = module:wind_pressure(edition, speed, book.panel_wind_minimum)
        local name = format("%s %s %s %s", module.plane:called(), module.model:called(), zone, exposed)
        if not judged[name] then
          judged[name] = true
          -- A clamp between two modules takes half of each on its rail: on so small an area wind lifts harder than on a whole one.
          local area = module:area() / rails
          local wind_up, wind_down = module:wind_pressure(edition, speed, book.panel_wind_minimum, 1 / rails)
          local up, _, _, along = calc.asd_combinations {
            edition = edition, wind_uplift = wind_up, wind_down = wind_down, snow = 0 * psf, roof_live = 0 * psf,
            slope = module.plane.slope, dead = calc.dead_load_per_area { weight = module.model.weight, area = module:area() },
          }
          if up * area > most then
            most, push, most_at, at = up * area, along * area, module, format("%s in zone %s", module:called(), zone)
          end
        end
      end
    end
    if not most_at then
      shall.be("Some module is clamped", false)
      return
    end
    if left_out then
      review(format("Wind is left out here for the modules on %s (asce/array-wind tells why): their clamps are not judged", left_out:called()))
    end
    local model = racking.model
    shall.not_exceed(format("Uplift on a clamp beside %s", at), most, model.clamp_uplift, lbf)
    if most <= 0 * lbf or most > model.clamp_uplift then return end
    local holds = smallest(model.clamp_along_rail, model.clamp_across_rail)
    if racking.mounting:is("rails", "shared rails") then
      holds = model.clamp_across_rail
      if racking.rail_direction:is("up the slope") then holds = model.clamp_along_rail end
    end
    -- How a clamp holds pull and push at once is for its maker to say; shares that add up to no more than one are safe.
    local share = most / model.clamp_uplift + push / holds
    if share > 1 then
      review(format("Uplift and push along the slope together take %.0f %% of what a clamp beside %s holds: its maker tells how it holds both at once", 100 * share, at))
    end
  end,
  remedy = "Add a rail below each module, or use clamps rated for more.",
}

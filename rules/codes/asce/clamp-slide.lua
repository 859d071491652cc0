---@type plumbrule.Rule
return {
  title = "Load along the slope on the module clamps",
  cite = "Chapter 7, 2.4; the maker's clamp",
  about = "racking",
  applies = function(racking) return racking.mounting:is("rails", "shared rails", "rail-less", "seam clamps") end,
  check = function(racking, book, design)
    local edition, basis, ground_snow = book:edition("asce"), tostring(book.ground_snow_basis), book.ground_snow_load
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    local model = racking.model

    -- Wind on modules that lie parallel to the roof presses square to it.
    local function along_slope(module, dead, is_drifted)
      local plane = module.plane
      local snow = plane:snow_load(edition, basis, ground_snow, book.roof_snow_minimum)
      if is_drifted then
        local drifted, _, needed, reach = plane:drifted_snow(edition, basis, ground_snow)
        if not needed or module:below_ridge() >= reach then return -1 * psf end
        snow = largest(snow, drifted)
      end
      local _, _, along = calc.asd_combinations {
        edition = edition, dead = dead, wind_uplift = 0 * psf, wind_down = 0 * psf, roof_live = 0 * psf, slope = plane.slope,
        snow = snow,
      }
      return along
    end

    local function judge(is_drifted)
      local under = ""
      if is_drifted then under = " under drifted snow" end
      local most, most_at = -1 * lbf, nil
      for _, module in ipairs(design.modules) do
        if not module.status:is("removed") then
          local dead = calc.dead_load_per_area { weight = module.model.weight, area = module:area() }
          -- A clamp between two modules takes half of each on its rail.
          local load = along_slope(module, dead, is_drifted) * module:area() / racking.rails_per_module
          if load >= 0 * lbf and load > most then most, most_at = load, module end
        end
      end
      if not most_at and is_drifted then return end -- none lies where it drifts
      if not most_at then
        shall.be("Some module is clamped", false)
        return
      end
      local on_clamp = format("Push along the slope%s on a clamp beside %s", under, most_at:called())
      if racking.mounting:is("rail-less", "seam clamps") then
        -- Nobody tells which way its clamps lie.
        shall.not_exceed(on_clamp, most, smallest(model.clamp_along_rail, model.clamp_across_rail), lbf)
        return
      end
      if racking.rail_direction:is("up the slope") then
        shall.not_exceed(format("%s (along its rail)", on_clamp), most, model.clamp_along_rail, lbf)
      else
        shall.not_exceed(format("%s (across its rail)", on_clamp), most, model.clamp_across_rail, lbf)
      end
    end

    judge(false)
    if ground_snow > book.unbalanced_snow_from then judge(true) end
  end,
  remedy = "Add rails, or use clamps rated for more of what pushes down the slope; asce/attachment-down judges the rail on its attachments.",
}

---@type plumbrule.Rule
return {
  title = "Growth of gravity load on existing members",
  cite = "806.2 (secondary source; snow drifts: from memory)",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 and plane.attachments:count() > 0 end,
  check = function(plane, book, design)
    local edition, basis, ground_snow = book:edition("asce"), tostring(book.ground_snow_basis), book.ground_snow_load
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    local snow = plane:snow_load(edition, basis, ground_snow, book.roof_snow_minimum)
    if same(basis, "strength level") then snow = 0.7 * snow end
    local live, slope = book.roof_live_load, plane.slope
    local under = live
    if design.racking.gap_below_modules <= book.live_load_gap then under = 0 * psf end
    -- Balanced snow alone: a drift lies there without the array, too, and beside its larger load the array's share is smaller.
    -- All per area of the surface, so that dead load and array need no turning.
    local framing = plane.framing
    local change, member = calc.existing_structure_change {
      dead = plane.dead_load, roof_live = live * cos(slope), snow = snow * cos(slope), array_dead = plane:array_dead_load(),
      live_under_array = under * cos(slope), roof_area = plane:area(), array_area = plane:covered_area(),
      member_share = framing:array_share(),
    }
    shall.meet_one_of {
      { "little growth", function()
          shall.not_exceed("Growth of the load on the whole plane", change, book.gravity_increase_limit)
          shall.not_exceed("Growth of the load on a member below the array", member, book.gravity_increase_limit)
        end },
      { "the members carry it", function()
          local dead, array = plane.dead_load / cos(slope), plane:array_dead_load()
          local function carry(name, given)
            local _, _, ratio = framing:under_array(given)
            shall.not_exceed(format("Stress over design value of the most loaded member under %s", name), ratio, 1)
          end
          carry("snow on the roof", { roof_load = dead + snow, array_load = array, load_duration = "snow" })
          if under > 0 * psf then carry("live load", { roof_load = dead + under, array_load = array, load_duration = "roof live" }) end
          if snow > 0 * psf then
            local drift, drifted, _, needed, reach = 0 * psf, plane:drifted_snow(edition, basis, ground_snow)
            if needed and ground_snow > book.unbalanced_snow_from then drift = largest(drift, drifted - snow) end
            carry("snow on the modules", { roof_load = dead, array_load = array + snow * cos(slope), load_duration = "snow", drift = drift * cos(slope), reach = reach })
          end
        end },
    }
  end,
  remedy = "Strengthen the members, or have an engineer show that they carry the array.",
}

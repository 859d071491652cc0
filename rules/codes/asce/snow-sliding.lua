---@type plumbrule.Rule
return {
  title = "Snow that slides off the array",
  cite = "7.9 (from memory)",
  about = "roof_plane",
  applies = function(plane, book, design)
    local ground_snow = book.ground_snow_load
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    return plane.modules:count() > 0 and ground_snow > 0 * psf
  end,
  check = function(plane)
    if plane.sheds_onto_lower_roof and not plane.snow_guards then
      review("Snow would slide from the glass onto a lower roof, an exit or a meter: guards, or a study of what lies below")
    elseif plane.sheds_onto_lower_roof then
      shall.be("Snow guards hold what would slide onto a lower roof, an exit or a meter", plane.snow_guards)
    else
      local is_over, lower = plane:roof_below()
      if is_over then
        review(format("Snow is told to slide onto nothing, but an eave of it runs over %s: the designer tells how much higher it lies, and what holds the snow", lower))
      end
      shall.be("Nothing below that sliding snow could harm", not plane.sheds_onto_lower_roof)
    end
  end,
  remedy = "Put snow guards above the eave, or keep the array back from it.",
}

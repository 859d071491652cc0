---@type plumbrule.Rule
return {
  title = "Wind regions that need an engineer",
  cite = { ["7-10"] = "26.5.1 (from memory), 26.5.2, 26.10.3.1 (from memory)", ["7-16"] = "26.5.1 (from memory), 26.5.2, 26.12.3.1 (from memory)",
    ["7-22"] = "26.5.1 (from memory), 26.5.2, 26.12.3.1 (from memory)" },
  about = "site",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(site, book)
    -- The maps differ by risk category; up to 7-16 snow has a factor for it instead.
    local needs_more = site.risk_category:is("III", "IV")
    if needs_more and not book.site_wind_study then
      review(format("The town's wind speed is for risk category II, and the building is of category %s, whose wind speed is higher", site.risk_category))
    end
    if needs_more and same(tostring(book.ground_snow_basis), "strength level") and not book.site_snow_study then
      review(format("A strength-level snow load is mapped for one risk category, and the building is of category %s: ask which one the town's is for", site.risk_category))
    end
    if site.special_wind_region then
      review("The site lies in a special wind region: its wind speed is found by a study of the place")
    else
      shall.be("The mapped wind speed holds for the site", not site.special_wind_region)
    end
    local speed
    if book.site_wind_study then speed = site.basic_wind_speed else speed = book.basic_wind_speed end
    if site.wind_borne_debris_region then
      review("The site lies in a wind-borne debris region: an engineer judges glass, clamps and the roof below")
    elseif book.hurricane_prone and speed >= book.debris_speed then
      review(format("The design says that it lies outside wind-borne debris regions, but at %s every site of a hurricane-prone region lies in one", speed))
    elseif book.hurricane_prone and speed >= book.debris_coast_speed and site.distance_to_shore <= book.debris_coast_reach then
      review(format("The design says that it lies outside wind-borne debris regions, but at %s a site %s from the coast lies in one", speed, site.distance_to_shore))
    else
      shall.be("The site lies outside wind-borne debris regions", not site.wind_borne_debris_region)
    end
  end,
  remedy = "Ask an engineer for the wind loads of this site.",
}

---@type plumbrule.Rule
return {
  title = "Wind regions that need an engineer",
  cite = "26.5.2, 26.12.3",
  about = "site",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(site)
    if site.special_wind_region then
      review("The site lies in a special wind region: its wind speed is found by a study of the place")
    else
      shall.be("The mapped wind speed holds for the site", not site.special_wind_region)
    end
    if site.wind_borne_debris_region then
      review("The site lies in a wind-borne debris region: an engineer judges glass, clamps and the roof below")
    else
      shall.be("The site lies outside wind-borne debris regions", not site.wind_borne_debris_region)
    end
  end,
  remedy = "Ask an engineer for the wind loads of this site.",
}

---@type plumbrule.Rule
return {
  title = "Wind on the array",
  cite = "29.4.4, 30.3 (7-10: 30.4)",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  -- What is known of it is judged with modules, clamps, rails, attachments and rafters; what is not, is said here once.
  check = function(plane, book)
    plane:find_wind(book:edition("asce"))
    shall.be("Wind on the array is covered by the figures at hand, and judged with each part", true)
  end,
  remedy = "Change what the section does not cover, or have an engineer find the wind and judge modules, clamps, rails, attachments and rafters under it: the rules about those leave wind out here.",
}

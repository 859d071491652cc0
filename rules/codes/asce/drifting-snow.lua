---@type plumbrule.Rule
return {
  title = "Snow that drifts over the ridge or against a wall",
  cite = "7.6.1; 7.7, 7.9 (from memory)",
  about = "roof",
  applies = function(_, book, design)
    local ground_snow = book.ground_snow_load
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    return design.modules:count() > 0 and ground_snow > book.unbalanced_snow_from
  end,
  -- What is known of a ridge is judged with modules, clamps, rails, attachments and rafters; what is not, is said here once.
  check = function(roof, book, design)
    local ground_snow = book.ground_snow_load
    if book.site_snow_study then ground_snow = design.site.ground_snow_load end
    -- A roof below a higher one: what the wind leaves there, and what slides down onto it, is not at hand.
    for _, plane in ipairs(roof.planes) do
      local has_wall = plane.modules:count() > 0 and plane:has_edge("wall")
      if has_wall then
        review(format("%s ends at a wall: snow drifts against it, and from a higher roof it slides down there; neither is counted with modules, clamps, rails, attachments and rafters", plane:called()))
      elseif plane.modules:count() > 0 then
        local is_below, upper = plane:eave_above()
        if is_below then
          review(format("An eave of %s runs over %s: snow drifts onto what lies below it, and from above it slides down there; neither is counted with modules, clamps, rails, attachments and rafters", upper, plane:called()))
        end
      end
    end
    for _, plane in ipairs(roof.planes) do
      if plane.modules:count() > 0 then
        plane:unbalanced_snow(book:edition("asce"), tostring(book.ground_snow_basis), ground_snow)
      end
    end
    shall.be("What drifts over the ridge is known, and judged with each part", true)
  end,
  remedy = "Have an engineer find the drifted snow and judge modules, clamps, rails, attachments and rafters under it.",
}

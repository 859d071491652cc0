---@type plumbrule.Rule
return {
  title = "Access pathway to the ridge",
  cite = { ["2018"] = "R324.6.1", ["2021"] = "R324.6.1" },
  about = "roof_plane",
  applies = function(plane, book)
    return plane.modules:count() > 0 and plane.slope > book.low_slope
  end,
  check = function(plane, book)
    shall.be_at_least("Widest clear strip from eave to ridge", plane:pathway_width(), book.pathway_width, inch)
  end,
  remedy = "Leave out a column of modules, or move the array to one side.",
}

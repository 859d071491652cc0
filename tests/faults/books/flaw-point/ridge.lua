---@type plumbrule.Rule
return {
  title = "Clear width at the ridge",
  cite = "Town Code 1-1",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book)
    shall.be_at_least("Clear width below the ridge", plane:clearance("ridge"), book.ridge_width, inch)
  end,
}

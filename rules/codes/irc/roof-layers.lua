---@type plumbrule.Rule
return {
  title = "Layers of roof covering",
  cite = "R908.3",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book)
    shall.not_exceed("Layers of roof covering", plane.layers, book.roof_layers)
  end,
  remedy = "Strip the roof before the array goes on.",
}

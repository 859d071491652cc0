-- Runs after every attack and must still pass.
return {
  title = "Witness", cite = "Trial", about = "roof_plane",
  check = function(plane, book)
    shall.not_exceed("Layers", plane.layers, 3)
    shall.not_exceed("Current", 99 * A, book.limit_current)
  end,
}

return {
  title = "Roof and array on the rafters",
  cite = "check 6",
  about = "roof_plane",
  check = function(plane) shall.not_exceed("Dead load with 3 psf of array", plane.dead_load + 3 * psf, 12 * psf) end,
}

return {
  title = "Least slope of shingles",
  cite = "check 5",
  about = "roof_plane",
  applies = function(plane) return plane.covering:is("composition shingle") end,
  check = function(plane) shall.be_at_least("Slope", plane.slope, 20 * deg) end,
}

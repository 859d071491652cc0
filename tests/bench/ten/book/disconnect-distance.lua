return {
  title = "The utility's disconnect is near the meter",
  cite = "check 8",
  about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("utility") end,
  check = function(disconnect) shall.not_exceed("Distance", disconnect.distance_to_meter, 10 * ft) end,
}

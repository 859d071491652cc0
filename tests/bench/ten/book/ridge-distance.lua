return {
  title = "Circuits and the ridge",
  cite = "check 4",
  about = "circuit",
  applies = function(circuit) return circuit.on_roof end,
  check = function(circuit) shall.be_at_least("Distance to the ridge", circuit.ridge_distance, 18 * inch) end,
}

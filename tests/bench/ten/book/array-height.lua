return {
  title = "Height of the array",
  cite = "check 3",
  about = "racking",
  check = function(racking) shall.not_exceed("Top above the roof", racking.height_above_roof, 6 * inch) end,
}

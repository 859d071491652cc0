return {
  title = "Letters of labels",
  cite = "check 10",
  about = "label",
  check = function(label) shall.be_at_least("Height", label.letter_height, 0.375 * inch) end,
}

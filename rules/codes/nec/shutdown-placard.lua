---@type plumbrule.Rule
return {
  title = "Letters of the rapid-shutdown placard",
  cite = { ["2017"] = "690.56(C)", ["2020"] = "690.56(C)", ["2023"] = "690.12(D)" },
  about = "label",
  applies = function(label) return label.kind:is("rapid shutdown", "rapid shutdown switch") end,
  check = function(label, book)
    shall.be_at_least("Height of the letters", label.letter_height, book.array_label_letters)
    shall.be("Permanent", label.permanent)
  end,
  remedy = "Order the placard in the size that the code asks for.",
}

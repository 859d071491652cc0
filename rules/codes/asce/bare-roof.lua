---@type plumbrule.Rule
return {
  title = "Wind on the roof below the array",
  cite = "29.4.4, 30.3 (from memory)",
  about = "roof",
  applies = function(_, book, design) return book.bare_roof_review and design.modules:count() > 0 end,
  check = function()
    review("Deck and covering below the array must still carry the wind on the bare roof: modules do not shelter it")
  end,
  remedy = "Have somebody confirm the nailing of the deck for the town's wind.",
}

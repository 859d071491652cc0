---@type plumbrule.Rule
return {
  title = "Spacing of attachments",
  cite = "attachment_spacing_limit, as the town sets it",
  about = "rail",
  applies = function(_, book) return book.attachment_spacing_limit < 1000 * inch end,
  check = function(rail, book)
    shall.be_at_least("Attachments on the rail", rail.attachments:count(), 2)
    shall.not_exceed("Largest distance of two attachments", rail:largest_span(), book.attachment_spacing_limit, inch)
  end,
  remedy = "Add attachments.",
}

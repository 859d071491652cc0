---@type plumbrule.Rule
return {
  title = "Weight of the array on the roof",
  cite = "R324.4.1",
  about = "racking",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(racking, book)
    local load = racking:array_dead_load()
    if load > book.array_dead_load_limit then
      review("The array is heavier than light framing takes without a study", load, book.array_dead_load_limit)
    end
    shall.be_more_than("Attachments", racking.attachments:count(), 0)
    should.not_exceed("Weight of the array per area", load, book.array_dead_load_limit)
    should.not_exceed("Weight on one attachment", racking:weight_per_attachment(), book.attachment_weight_limit)
  end,
  remedy = "Add attachments, or have an engineer look at the framing.",
}

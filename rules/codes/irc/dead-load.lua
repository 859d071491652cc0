---@type plumbrule.Rule
return {
  title = "Weight of the array on the roof",
  cite = { ["2018"] = "R324.4.1", ["2021"] = "R324.4.1", ["2024"] = "R329.4.1 (number from memory)" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local load = design:array_dead_load()
    shall.be_more_than("Attachments", design.racking.attachments:count(), 0)
    if load > book.array_dead_load_limit then
      review("The array is heavier than light framing takes without a study", load, book.array_dead_load_limit)
    else
      shall.not_exceed("Weight of the array per area", load, book.array_dead_load_limit)
    end
    should.not_exceed("Weight on one attachment", design:weight_per_attachment(), book.attachment_weight_limit)
  end,
  remedy = "Add attachments, or have an engineer look at the framing.",
}

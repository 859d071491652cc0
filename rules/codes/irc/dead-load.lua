-- What the racking weighs at least: its rails as drawn, and something for each attachment.
local function least_weight(racking, book)
  local least = racking.attachments:count() * book.attachment_weight_least
  if racking.rails:count() < 1 then return least end
  local length = 0 * ft
  for _, rail in ipairs(racking.rails) do length = length + rail.length end
  return least + length * racking.model.rail_weight
end

---@type plumbrule.Rule
return {
  title = "Weight of the array on the roof",
  cite = { ["2018"] = "R324.4.1", ["2021"] = "R324.4.1", ["2024"] = "R329.4.1 (number from memory)" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local load = 0 * psf -- where it is heaviest
    for _, plane in ipairs(design.roof.planes) do
      if plane:module_count() > 0 then
        local here = plane:array_dead_load()
        load = largest(load, here)
      end
    end
    shall.be_more_than("Attachments", design.racking.attachments:count(), 0)
    if load > book.array_dead_load_limit then
      review("The array is heavier than light framing takes without a study", load, book.array_dead_load_limit)
    else
      shall.not_exceed("Weight of the array per area", load, book.array_dead_load_limit)
    end
    local least = least_weight(design.racking, book) / (1 * lbf) * (1 * lb)
    if design.racking.weight < least then
      review(format("All racking is told to weigh %s, and its rails and attachments as drawn weigh %.0f lb or more: the designer adds up what lies on the roof", design.racking.weight, least / (1 * lb)))
    end
    should.not_exceed("Weight on one attachment", design:weight_per_attachment(), book.attachment_weight_limit)
  end,
  remedy = "Add attachments, or have an engineer look at the framing.",
}

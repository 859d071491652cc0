-- Portrait and landscape modules have rails at two distances, and one is told.
local function lie_all_one_way(design)
  local first = design.modules[1].orientation
  for _, module in ipairs(design.modules) do
    if not same(tostring(module.orientation), tostring(first)) then return false end
  end
  return true
end

-- Between the modules of each row, what wind comes through; and a model that is among the attachments.
local function compare_rest(racking, design, slack)
  for _, row in ipairs(design.module_rows) do
    if abs(row.gap - racking.module_gap) > slack then
      review(format("The gap between modules is told to be %s, and %s in row %s: the designer tells which is built", racking.module_gap, row.gap, row:called()))
      break
    end
  end
  if not racking.attachment_model then return end
  for _, attachment in ipairs(racking.attachments) do
    if same(attachment.model, racking.attachment_model) then return end
  end
  review(format("The attachments are told to be of model %s, and none of those drawn is: the designer tells which is built", racking.attachment_model:called()))
end

---@type plumbrule.Rule
-- Every other rule goes by the rails and attachments as they are drawn; the crew's sheet shows what is told.
return {
  title = "Racking as told and as drawn",
  cite = "R106.1.1 (what the plans tell, from memory)",
  about = "racking",
  applies = function(racking, _, design)
    return design.modules:count() > 0 and racking.mounting:is("rails", "shared rails") and racking.rails:count() > 0
  end,
  check = function(racking, book, design)
    local slack = book.racking_told_slack
    local function compare(what, drawn, told, least)
      if drawn > told + slack or drawn < least then
        review(format("%s: %.1f in as drawn, and told to be %s: the designer tells which is built", what, drawn / (1 * inch), told))
      else
        shall.not_exceed(format("%s, as drawn against what is told", what), drawn, told + slack, inch)
      end
    end
    local span, overhang = 0 * inch, 0 * inch
    for _, rail in ipairs(racking.rails) do
      if rail.attachments:count() > 0 then
        span, overhang = largest(span, rail:largest_span()), largest(overhang, rail:cantilever())
      end
    end
    compare("Largest distance of two attachments on a rail", span, racking.attachment_spacing, racking.attachment_spacing - slack)
    compare("Longest end of a rail past its last attachment", overhang, racking.cantilever, 0 * inch)
    local apart
    local widest = 0 * inch
    for _, plane in ipairs(design.roof.planes) do
      if plane.modules:count() > 0 and plane.rails:count() > 0 then
        local _, spread, _, wide = plane:least_rail_spread()
        widest = largest(widest, wide)
        if not apart or spread < apart then apart = spread end
      end
    end
    local told = racking.rail_spacing
    if apart and (abs(apart - told) <= slack or lie_all_one_way(design)) then
      compare("Least distance of the rails below a module", apart, told, told - slack)
      if widest > told + slack and lie_all_one_way(design) then
        review(format("Largest distance of the rails below a module: %.1f in as drawn, and told to be %s: the designer tells which is built", widest / (1 * inch), told))
      end
    end
    compare_rest(racking, design, book.module_gap_slack)
  end,
  remedy = "Tell spacing and overhang as rails and attachments are drawn, or draw them as told.",
}

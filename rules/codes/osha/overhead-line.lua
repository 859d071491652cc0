---@type plumbrule.Rule
return {
  title = "Distance from overhead lines",
  cite = "29 CFR 1926.1408 Table A",
  about = "jobsite",
  check = function(jobsite, book)
    local voltage, needed = jobsite.overhead_line_voltage, book.line_clearance_50_kv
    if voltage > 350 * kV then
      review("Lines above 350 kV need the utility's word on the distance", voltage)
      return
    end
    if voltage > 200 * kV then
      needed = book.line_clearance_350_kv
    elseif voltage > 50 * kV then
      needed = book.line_clearance_200_kv
    end
    shall.be_at_least("Distance from overhead lines", jobsite.overhead_line_distance, needed)
  end,
  remedy = "Keep people, ladders and rails away from the lines, or have the utility cover them.",
}

---@type plumbrule.Rule
return {
  title = "Distance from overhead lines",
  cite = "29 CFR 1926.1408 Table A",
  about = "jobsite",
  check = function(jobsite, book)
    if jobsite.overhead_line_voltage > 50 * kV then
      review("Lines above 50 kV need a wider distance and the utility's word", jobsite.overhead_line_voltage)
    else
      shall.be_at_least("Distance from overhead lines", jobsite.overhead_line_distance, book.line_clearance_50_kv)
    end
  end,
  remedy = "Keep people, ladders and rails away from the lines, or have the utility cover them.",
}

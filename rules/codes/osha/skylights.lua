---@type plumbrule.Rule
return {
  title = "Skylights and holes",
  cite = "29 CFR 1926.501(b)(4)",
  about = "jobsite",
  check = function(jobsite, _, design)
    shall.be("Skylights and holes are guarded", jobsite.skylights_guarded)
    for _, plane in ipairs(design.roof.planes) do
      for _, thing in ipairs(plane.obstructions) do
        if thing.kind:is("skylight", "hatch") then
          shall.be(format("%s is guarded against falls", thing:called()), thing.guarded)
        end
      end
    end
  end,
  remedy = "Cover or fence skylights, or work tied off near them.",
}

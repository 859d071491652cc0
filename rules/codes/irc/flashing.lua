---@type plumbrule.Rule
return {
  title = "Flashing where attachments pierce the covering",
  cite = "R903.2",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 and plane.attachments:count() > 0 end,
  check = function(plane)
    local told = {} -- what is told of one mount holds for all of its model
    for _, attachment in ipairs(plane.attachments) do
      local model = attachment.model
      if not told[model:called()] then
        told[model:called()] = true
        shall.be(format("%s is made for %s", model:called(), plane.covering), model.coverings:has(tostring(plane.covering)))
        if model.kind:is("seam clamp") then
          shall.be("A seam clamp pierces nothing and stands on a standing seam", plane.covering:is("standing seam metal"))
        elseif plane.covering:is("composition shingle", "wood shake", "wood shingle", "slate") then
          shall.be("A flashing lies under the courses above", model.flashing:is("integral", "separate"))
        elseif plane.covering:is("concrete tile", "clay tile") then
          shall.be("A tile hook or a tile's replacement, flashed", model.kind:is("tile hook", "tile replacement", "standoff") and model.flashing:is("integral", "separate"))
        else
          shall.be("Sealed or flashed", not model.flashing:is("none"))
        end
      end
    end
  end,
  remedy = "Use a mount whose flashing is made for this covering.",
}

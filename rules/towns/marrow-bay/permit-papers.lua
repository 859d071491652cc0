---@type plumbrule.Rule
return {
  title = "Papers for the permit",
  cite = "Town Code 14-11",
  about = "design",
  check = function(design)
    local function has(kind)
      for _, paper in ipairs(design.papers) do
        if paper.kind:is(kind) then return not paper.state:is("missing") end
      end
      return false
    end
    shall.be("Site plan", has("site plan"))
    shall.be("Roof plan", has("roof plan"))
    shall.be("One- or three-line diagram", has("one-line diagram") or has("three-line diagram"))
    shall.be("Data sheets of the equipment", has("equipment data sheets"))
    shall.be("Sheet of labels", has("label sheet"))
  end,
  remedy = "Add the papers that are missing to the application.",
}

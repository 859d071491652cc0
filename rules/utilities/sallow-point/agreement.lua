---@type plumbrule.Rule
-- The town's permit is no permission to run in parallel.
return {
  title = "Application and agreement before operation",
  cite = "Sallow Point sheet 1",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design)
    local applied, agreed, permitted = false, false, false
    for _, paper in ipairs(design.papers) do
      if paper.kind:is("interconnection application") then applied = paper.state:is("submitted", "approved") end
      if paper.kind:is("interconnection agreement") then agreed = paper.state:is("approved") end
      if paper.kind:is("permission to operate") then permitted = paper.state:is("approved") end
    end
    shall.be("The application is with the utility", applied)
    if permitted then shall.be("The agreement is signed before operation", agreed) end
  end,
  remedy = "Send the application with the one-line diagram; sign the agreement before the system runs.",
}

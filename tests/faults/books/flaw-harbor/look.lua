---@type plumbrule.Rule
return {
  title = "Somebody looks at the roof",
  cite = "Harbor Code 5",
  about = "roof_plane",
  check = function() review("Somebody looks at the roof") end,
}

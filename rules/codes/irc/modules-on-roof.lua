local function first(of, module, other)
  if not module then return of end
  return format("%s (the first: %s%s)", of, module, other and format(" and %s", other) or "")
end

---@type plumbrule.Rule
return {
  title = "Modules lie on the roof",
  cite = { ["2018"] = "R324.4", ["2021"] = "R324.4", ["2024"] = "R329.4 (number from memory)" },
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane)
    local out, module = plane:modules_over_edge()
    shall.be_equal(first("Modules over an edge of the plane", module), out, 0)
    local over, above, obstruction = plane:modules_over_obstructions()
    shall.be_equal(first("Modules over an obstruction", above, obstruction), over, 0)
    local pairs_over, one, other = plane:modules_overlapping()
    shall.be_equal(first("Pairs of modules over one another", one, other), pairs_over, 0)
  end,
  remedy = "Move the modules that stand over an edge, an obstruction or each other.",
}

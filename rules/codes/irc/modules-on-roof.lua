---@type plumbrule.Rule
return {
  title = "Modules lie on the roof",
  cite = { ["2018"] = "R324.4", ["2021"] = "R324.4", ["2024"] = "R329.4 (number from memory)" },
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane)
    shall.be_equal("Modules over an edge of the plane", plane:modules_over_edge(), 0)
    shall.be_equal("Modules over an obstruction", plane:modules_over_obstructions(), 0)
    shall.be_equal("Modules over one another", plane:modules_overlapping(), 0)
  end,
  remedy = "Move the modules that stand over an edge, an obstruction or each other.",
}

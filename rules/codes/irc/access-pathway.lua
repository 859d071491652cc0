---@type plumbrule.Rule
return {
  title = "Access pathway to the ridge",
  cite = { ["2018"] = "R324.6.1", ["2021"] = "R324.6.1", ["2024"] = "R329.6.1" },
  about = "roof_plane",
  applies = function(plane, book, design)
    if plane.modules:count() < 1 or book.pathways_per_plane < 1 then return false end
    if book.exempt_low_slope and plane.slope <= book.low_slope then return false end
    if plane.slope > book.exempt_steeper_than then return false end
    if book.exempt_detached and plane.structure:is("detached garage", "carport", "shade structure") and plane:stands_apart() then return false end
    if book.exempt_sprinklered and not design.building.sprinklers:is("none") then return false end
    return (not book.exempt_no_roof_operations or design.building.roof_operations) and plane:module_count() > 0
  end,
  check = function(plane, book, design)
    local share, area = plane:building_share(), design.roof:array_area()
    local width = book.pathway_width
    local is_little = share < book.pathway_free_coverage or same(share, book.pathway_free_coverage)
    if book.pathway_free_coverage > 0 and is_little and area <= book.pathway_free_area then
      shall.not_exceed("Share of the roof under modules, so little that no pathway is asked for", share, book.pathway_free_coverage)
      shall.not_exceed("Area of all modules, so small that no pathway is asked for", area, book.pathway_free_area, sq_ft)
      return
    end
    if book.pathways_per_plane > 1 then
      shall.be_at_least("Pathways of the asked width on this plane", plane:pathway_count(width), book.pathways_per_plane)
      return
    end
    local own = plane:pathway_width()
    if own >= width or not (book.pathway_adjacent or book.pathway_straddling) then
      shall.be_at_least("Widest clear strip from eave to ridge", own, width, inch)
      return
    end
    shall.meet_one_of {
      { "on an adjacent plane", function()
          shall.be("The book lets it lie on an adjacent plane", book.pathway_adjacent)
          if book.pathway_adjacent then
            shall.be_at_least(format("Widest clear strip on an adjacent plane, %s on this one,", own), plane:adjacent_pathway_width(), width, inch)
          end
        end },
      { "straddling two planes", function()
          shall.be("The book lets it straddle two planes", book.pathway_straddling)
          if book.pathway_straddling then
            shall.be_at_least(format("Widest clear strip over both planes, %s on this one,", own), plane:straddling_pathway_width(), width, inch)
          end
        end },
    }
  end,
  remedy = "Leave out a column of modules, or move the array to one side.",
}

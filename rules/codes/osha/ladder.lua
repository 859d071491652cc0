---@type plumbrule.Rule
return {
  title = "Ladders",
  cite = "29 CFR 1926.1053(b)",
  about = "jobsite",
  check = function(jobsite, book)
    shall.meet_one_of {
      { "standing above the landing", function()
          shall.be_at_least("Ladder above the landing", jobsite.ladder_extension, book.ladder_extension, ft)
        end },
      { "tied, with a grab", function() review("A shorter ladder must be tied and have something to hold on to at the landing") end },
    }
    shall.be("The ladder is tied", jobsite.ladder_tied)
    shall.not_exceed("Base of the ladder over its working length", jobsite.ladder_base_ratio, book.ladder_base_ratio)
    if jobsite.ladder_base_ratio < book.ladder_base_least then
      review(format("The base of the ladder stands out %.2f of its working length, steeper than about a quarter: it tips backwards", jobsite.ladder_base_ratio))
    end
    shall.be("Modules go up by hoist, not by ladder", jobsite.modules_by_hoist)
  end,
  remedy = "Set the ladder one foot out for every four up, three feet above the edge, tied.",
}

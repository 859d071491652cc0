---@type plumbrule.Rule
return {
  title = "All sources against the service",
  cite = { ["2017"] = "705.12(A)", ["2020"] = "705.11(A)", ["2023"] = "705.11(A)" },
  about = "service",
  check = function(service, book)
    if same(book:edition("nec"), "2017") then
      shall.not_exceed("Ratings of all source overcurrent devices", service:source_rating_sum(), service.rating)
    else
      shall.not_exceed("Rated currents of all sources", service:source_current_sum(), service.conductor_ampacity)
    end
  end,
  remedy = "Fewer or smaller sources, or a larger service.",
}

---@type plumbrule.Rule
return {
  title = "Load of a changed service",
  cite = { ["2017"] = "220.82, 220.83, 220.87", ["2020"] = "220.82, 220.83, 220.87", ["2023"] = "220.82, 220.83, 220.87" },
  about = "service",
  applies = function(service) return not service.work:is("untouched") end,
  check = function(service, book)
    local edition = tonumber(book:edition("nec"))
    local loads = service.load_calculation
    shall.meet_one_of {
      { "optional method", function()
          shall.not_exceed("Load of the dwelling", loads:optional(edition), service.rating)
        end },
      { "existing dwelling", function()
          shall.not_exceed("Load of the dwelling", loads:existing(edition), service.rating)
        end },
      { "metered peak", function()
          shall.not_exceed("125 % of a year's metered peak", loads:metered(), service.rating)
        end },
    }
  end,
  remedy = "Use a larger service, or manage the loads.",
}

---@type plumbrule.Rule
return {
  title = "Size of the service disconnect",
  cite = "230.79(C)",
  about = "service",
  applies = function(_, _, design) return design.building.occupancy:is("one-family dwelling") end,
  check = function(service, book)
    if service.work:is("untouched") and service.disconnect_rating < book.service_disconnect_minimum then
      review("The service stays as it is, but its disconnect is smaller than a new one may be", service.disconnect_rating)
    else
      shall.be_at_least("Rating of the service disconnect", service.disconnect_rating, book.service_disconnect_minimum)
    end
  end,
  remedy = "A new or changed service of a one-family dwelling takes a disconnect of at least 100 A.",
}

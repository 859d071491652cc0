---@type plumbrule.Rule
-- New in 2020; that a replaced panel at the service counts, from memory (230.67(D)).
return {
  title = "Surge protection of the service",
  cite = { ["2017"] = "(none)", ["2020"] = "230.67", ["2023"] = "230.67" },
  about = "service",
  applies = function(service, book)
    return not same(book:edition("nec"), "2017") and service:is_renewed()
  end,
  check = function(service)
    shall.be("There is a surge-protective device", service.surge_protection)
  end,
  remedy = "A new or replaced service of a dwelling takes a surge-protective device.",
}

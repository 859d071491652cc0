---@type plumbrule.Rule
-- Letters of 705.12 of 2020 and of 705.30 of 2023 from memory.
return {
  title = "A breaker that is fed from behind",
  cite = { ["2017"] = "705.12(B)(4), 110.3(B)", ["2020"] = "705.12(D), 110.3(B)", ["2023"] = "705.30(D), 110.3(B)" },
  about = "breaker",
  applies = function(breaker)
    if breaker.duty:is("main", "spare") or breaker.status:is("removed") then return false end
    return breaker.duty:is("source") or breaker:has_sources()
  end,
  check = function(breaker)
    shall.be("Suitable for backfeed", breaker.suitable_for_backfeed)
    shall.be("Listed for this panel", breaker.listed_for_panel)
    if not breaker.protection:is("none") then
      shall.be("Its arc-fault or ground-fault protection is listed for backfeed", breaker.protection_listed_for_backfeed)
    end
  end,
  remedy = "Use a breaker that the panel's marking names and that may be fed from either side.",
}

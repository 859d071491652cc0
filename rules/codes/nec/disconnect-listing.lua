---@type plumbrule.Rule
-- Which standard is for what: from memory. Switches and breakers for DC of PV have standards of their own. The switch
-- that only sets off rapid shutdown carries a signal, and is left out.
return {
  title = "Listing of a disconnect",
  cite = { ["2017"] = "690.4(B), 690.13(F), 110.3(B)", ["2020"] = "690.4(B), 690.13(E), 110.3(B)", ["2023"] = "690.4(B), 690.13(E), 110.3(B)" },
  about = "disconnect",
  applies = function(disconnect) return not disconnect.role:is("rapid shutdown") end,
  check = function(disconnect)
    local listings, of, is_dc = disconnect.listings, nil, disconnect.role:is("DC")
    if disconnect.role:is("equipment") then of = disconnect.of end
    if of and (same(of:kind_of(), "string") or same(of:kind_of(), "combiner")) then is_dc = true end
    if is_dc then
      shall.be("Listed to UL 98B or UL 489B, for DC of PV", listings:has("UL 98B") or listings:has("UL 489B"))
    else
      shall.be("Listed to UL 98, UL 489 or UL 869A", listings:has("UL 98") or listings:has("UL 489") or listings:has("UL 869A"))
    end
  end,
  remedy = "Use a switch or breaker that is listed for what it opens.",
}

---@type plumbrule.Rule
return {
  title = "Listing of the racking",
  cite = { ["2017"] = "690.43(A), 110.3(B)", ["2020"] = "690.43(A), 110.3(B)", ["2023"] = "690.43(A), 110.3(B)" },
  about = "racking",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(racking)
    should.be("The racking is listed to UL 2703", racking.model.listings:has("UL 2703"))
  end,
  remedy = "Use racking that is listed for mounting and bonding.",
}

---@type plumbrule.Rule
-- Sections from memory.
return {
  title = "Listing of the microinverters",
  cite = { ["2017"] = "690.4(B), 705.6", ["2020"] = "690.4(B), 705.6", ["2023"] = "690.4(B), 705.6" },
  about = "branch",
  check = function(branch)
    shall.be("Listed to UL 1741 for use with the utility", branch.microinverter.listings:has("UL 1741"))
  end,
  remedy = "Use microinverters that are listed to UL 1741.",
}

---@type plumbrule.Rule
-- Section from memory.
return {
  title = "Listing of the DC-to-DC converters",
  cite = "690.4(B)",
  about = "string",
  applies = function(string) return string.has_converters end,
  check = function(string)
    local listings = string.converter.listings
    shall.be("Listed to UL 1741 or UL 62109", listings:has("UL 1741") or listings:has("UL 62109"))
  end,
  remedy = "Use converters that are listed to UL 1741 or UL 62109.",
}

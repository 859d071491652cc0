---@type plumbrule.Rule
-- Sections from memory.
return {
  title = "Disconnects against the available fault current",
  cite = "110.9, 110.10",
  about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("service", "emergency", "PV system", "AC", "utility") end,
  check = function(disconnect, _, design)
    shall.be_at_least("Interrupting or withstand rating", disconnect.interrupting_rating, design.service.available_fault_current)
  end,
  remedy = "Use a switch or breaker of a higher rating, or fuses before it.",
}

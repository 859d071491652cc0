-- At the service itself: its own disconnects, and that of sources connected ahead of them.
local function is_at_the_service(disconnect, design)
  if disconnect.role:is("service", "emergency") then return true end
  local connection = design.interconnection
  if not connection.side:is("supply side") then return false end
  if connection.disconnect then return same(disconnect, connection.disconnect) end
  return disconnect.role:is("PV system")
end

---@type plumbrule.Rule
-- Sections from memory. Farther on the current is smaller; how much, an engineer or a calculation tells.
return {
  title = "Disconnects against the available fault current",
  cite = "110.9, 110.10",
  about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("service", "emergency", "PV system", "AC", "utility") end,
  check = function(disconnect, _, design)
    local rating, available = disconnect.interrupting_rating, design.service.available_fault_current
    if rating < available and not is_at_the_service(disconnect, design) then
      review(format("Its interrupting or withstand rating of %s is less than the current at the service, %s: the designer shows the current at its own line terminals, or what limits it", rating, available))
    else
      shall.be_at_least("Interrupting or withstand rating", rating, available)
    end
  end,
  remedy = "Use a switch or breaker of a higher rating, or fuses before it.",
}

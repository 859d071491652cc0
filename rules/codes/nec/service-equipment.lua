-- A meter disconnect need not be service equipment; its label says that it is one.
local function is_called_a_meter_disconnect(design)
  for _, label in ipairs(design.labels) do
    if label.kind:is("emergency disconnect") and string.contains(string.upper(label.text), "METER DISCONNECT") then return true end
  end
  return false
end

---@type plumbrule.Rule
-- Sections from memory. An emergency disconnect ahead of the service disconnect carries what that carries.
return {
  title = "Service disconnect suitable as such",
  cite = { ["2017"] = "230.66, 230.70", ["2020"] = "230.66, 230.70, 230.85", ["2023"] = "230.66, 230.70, 230.85" },
  about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("service", "emergency") end,
  check = function(disconnect, _, design)
    if disconnect.role:is("emergency") and not disconnect.service_rated and is_called_a_meter_disconnect(design) then
      review("It is no service equipment, and its label calls it a meter disconnect: the authority decides whether it is one (it stands beside the meter and opens nothing else)")
    else
      shall.be("Suitable for use as service equipment", disconnect.service_rated)
    end
    shall.be("Readily accessible", disconnect.readily_accessible)
    shall.be("Not in a bathroom", not disconnect.location:is("bathroom"))
    shall.be_at_least("Rating against the service's", disconnect.rating, design.service.disconnect_rating)
    shall.be_at_least("Voltage rating", disconnect.voltage_rating, design.service.voltage)
  end,
  remedy = "Use equipment that is marked as service equipment and rated for the service, where one can reach it.",
}

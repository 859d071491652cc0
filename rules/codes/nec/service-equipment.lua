---@type plumbrule.Rule
-- Sections from memory.
return {
  title = "Service disconnect suitable as such",
  cite = "230.66, 230.70",
  about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("service") end,
  check = function(disconnect, _, design)
    shall.be("Suitable for use as service equipment", disconnect.service_rated)
    shall.be("Readily accessible", disconnect.readily_accessible)
    shall.be("Not in a bathroom", not disconnect.location:is("bathroom"))
    shall.be_at_least("Rating against the service's", disconnect.rating, design.service.disconnect_rating)
  end,
  remedy = "Use equipment that is marked as service equipment, where one can reach it.",
}

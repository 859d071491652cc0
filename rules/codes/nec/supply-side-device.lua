-- Does the disconnect that the conductors end at stand in the building, though they are told to be outside?
local function ends_inside(connection, design)
  for _, disconnect in ipairs(design.disconnects) do
    local is_it = disconnect.role:is("PV system")
    if connection.disconnect then is_it = same(disconnect, connection.disconnect) end
    if is_it and not disconnect.location:is("outside wall", "roof", "ground") then return true end
  end
  return false
end

---@type plumbrule.Rule
-- 2017: 705.31, 10 ft; 2020: 10 ft inside a dwelling; 2023 dropped the distance and points to
-- Article 230, Part VII. Outside, 2020: in the outside disconnect (from memory).
return {
  title = "Connection on the supply side: place of the overcurrent device",
  cite = { ["2017"] = "705.31", ["2020"] = "705.11(C)", ["2023"] = "705.11(F), 230.91" },
  about = "interconnection",
  applies = function(connection) return connection.side:is("supply side") end,
  check = function(connection, book, design)
    local edition = tonumber(book:edition("nec"))
    shall.be("The design shows its conductors", not not connection.conductors)
    if not connection.conductors then return end
    if edition >= 2023 then
      if connection.conductors.ocpd:is("fuse") then
        review("The conductors are told to have fuses of their own: the inspector looks that they stand in the disconnect or right beside it")
      else
        shall.be("The device is part of the disconnect", connection.conductors.ocpd:is("fused disconnect", "circuit breaker"))
      end
      if connection.conductors.inside_building then
        review(format("Its conductors run %s inside the building ahead of their device: they are to come in nearest to it (230.70(A)(1)), and the authority decides how far is near", connection.conductors.length_inside))
      elseif ends_inside(connection, design) then
        review("Its conductors are told to be outside, and the disconnect that they reach to be inside: the designer tells how far they run inside ahead of their device")
      elseif connection.inside_building then
        review("The connection is told inside the building, and its conductors outside: the designer tells which holds, and how far they run inside ahead of their device")
      end
    elseif edition >= 2020 and not connection.inside_building and not connection.conductors.inside_building and not ends_inside(connection, design) then
      shall.be("The device is part of the disconnect outside", connection.conductors.ocpd:is("fused disconnect", "circuit breaker"))
    else
      shall.not_exceed("Conductor length from the connection to its device", connection.ocpd_distance, book.supply_side_distance)
      if connection.conductors.length > connection.ocpd_distance then
        review(format("Its conductors are %s long, and the device is told to be %s from the connection: the inspector looks where on their way it stands", connection.conductors.length, connection.ocpd_distance))
      end
    end
  end,
  remedy = "Put a fused disconnect within 10 ft of the connection.",
}

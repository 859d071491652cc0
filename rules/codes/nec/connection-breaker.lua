local function are_same(a, b) return a and b and same(a:kind_of(), b:kind_of()) and same(a, b) or false end

-- The breakers that sources feed where it is connected: of a panel on all its buses, of a bus on that one.
local function source_breakers(at)
  local buses, list = { at }, {}
  if same(at:kind_of(), "panel") then buses = at.busbars end
  for _, bus in ipairs(buses) do
    for _, breaker in ipairs(bus.breakers) do
      if not breaker.duty:is("main", "spare") and not breaker.status:is("removed") and (breaker.duty:is("source") or breaker.serves and breaker:has_sources()) then
        table.insert(list, breaker)
      end
    end
  end
  return list
end

-- The one that its conductors come to, if what they carry tells.
local function is_theirs(breaker, conductors)
  if not conductors or not breaker.serves then return false end
  local is_it = are_same(breaker.serves, conductors.from)
  for _, carried in ipairs(conductors.carries) do
    is_it = is_it or are_same(breaker.serves, carried)
  end
  return is_it
end

---@type plumbrule.Rule
-- The design tells of the device at the connection twice, there and in the panel: where the two differ, one is wrong.
-- That a connection on the load side has a device of its own at it: 705.12(B)(1) of 2017, (A) of 2020, 705.30 of 2023, letters from memory.
return {
  title = "Device of a connection on the load side",
  cite = { ["2017"] = "705.12(B)(1), 690.9(B)", ["2020"] = "705.12(A), 705.30", ["2023"] = "705.12, 705.30" },
  about = "interconnection",
  applies = function(connection) return connection.side:is("load side") end,
  check = function(connection)
    local at = connection.at
    local is_shown = at and not same(at:kind_of(), "circuit") or false
    shall.be("The connection is at a panel or bus that the design shows", is_shown)
    if not is_shown then return end
    local breakers, its_own, fitting = source_breakers(at), 0, 0
    for _, breaker in ipairs(breakers) do
      if is_theirs(breaker, connection.conductors) then
        its_own = its_own + 1
        shall.be_equal(format("Rating told of the interconnection, against its breaker %s", breaker:called()), connection.ocpd_rating, breaker.rating)
      end
      if same(connection.ocpd_rating, breaker.rating) then fitting = fitting + 1 end
    end
    if its_own > 0 then return end
    if #breakers < 1 then
      review(format("No breaker there is one that a source feeds: the designer shows the device of %s that is told at the connection", connection.ocpd_rating))
    elseif #breakers < 2 then
      shall.be_equal(format("Rating told of the interconnection, against breaker %s, the only one there that a source feeds", breakers[1]:called()), connection.ocpd_rating, breakers[1].rating)
    else
      shall.be_more_than("Breakers there that sources feed, and that have the rating told of the interconnection", fitting, 0)
    end
  end,
  remedy = "Tell the same rating at the interconnection and of its breaker in the panel.",
}

-- Voltage between the ungrounded conductors and of one of them to ground, as utilities serve houses.
local function has(service, phases, between, to_ground)
  return same(service.phases, phases) and same(service.voltage, between) and same(service.voltage_to_ground, to_ground)
end

local function is_usual(service)
  return has(service, 1, 240 * V, 120 * V)
    or has(service, 1, 208 * V, 120 * V) -- two legs of 208Y/120
    or has(service, 1, 120 * V, 120 * V) -- two wires, one of them grounded
    or has(service, 3, 208 * V, 120 * V)
    or has(service, 3, 480 * V, 277 * V)
end

---@type plumbrule.Rule
-- Working space, bonding and the poles of breakers rest on the voltage to ground: it must be that of such a service. It
-- is the largest one: never more than between two conductors, never less than half of that, or, of three phases, than
-- it over the root of three (1.74 leaves room for rounded names: 277 V of 480 V). Sections from memory.
return {
  title = "Voltage of the service to ground",
  cite = "Article 100 (voltage to ground), 250.20, 250.26",
  about = "service",
  check = function(service, _, design)
    local between, to_ground = service.voltage, service.voltage_to_ground
    local connection = design.interconnection.nominal_voltage
    if not same(connection, to_ground) then
      shall.be_equal("Voltage told of the interconnection, against the service's", connection, between)
    end
    local ratio = 2
    if service.phases > 2 then ratio = 1.74 end
    shall.not_exceed("Voltage to ground, against that between ungrounded conductors", to_ground, between)
    shall.be_at_least("Voltage to ground, against the least that such a service can have", to_ground, between / ratio)
    if to_ground <= between and to_ground >= between / ratio and not is_usual(service) then
      review(format("%s to ground at %s between conductors is no usual service (120/240 V and two legs of 208Y/120 V have 120 V to ground, 480Y/277 V has 277 V): the utility says whether it is ungrounded, corner-grounded or has a high leg, and the authority whether 250.20 lets it stand", to_ground, between))
    end
  end,
  remedy = "Tell the largest voltage of an ungrounded conductor to ground: 120 V of a 120/240 V or 208Y/120 V service, 277 V of 480Y/277 V.",
}

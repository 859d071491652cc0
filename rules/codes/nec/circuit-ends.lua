local function is_dc(circuit) return circuit.role:is("PV source", "PV output", "converter output") end

-- Behind a disconnect the design shows what goes on from it, and before it what comes to it: a circuit that begins
-- there is not the whole way.
local function has_circuit(design, side, disconnect)
  for _, other in ipairs(design.circuits) do
    if not other.status:is("removed") then
      local at = other[side]
      if at and same(at:kind_of(), "disconnect") and same(at, disconnect) then return true end
    end
  end
  return false
end

-- What the array gives begins at a source, not at a switch behind it.
local function begins_where_something_ends(circuit, design)
  if not circuit.role:is("PV source", "converter output", "inverter output", "microinverter branch", "combined branches", "supply-side") then return end
  local from = circuit.from
  if from and same(from:kind_of(), "disconnect") and not has_circuit(design, "to", from) then
    review(format("It begins at disconnect %s, and no circuit of the design comes to that: the designer shows the conductors before it", from:called()))
  end
end

-- Rules go by the role: one that is told wrongly would pass them by.
local function carries_what_its_role_says(circuit)
  local expected
  if circuit.role:is("inverter output") then
    expected = "inverter"
  elseif circuit.role:is("microinverter branch") then
    expected = "branch"
  elseif is_dc(circuit) then
    expected = "string"
  end
  if not expected then return end
  for _, carried in ipairs(circuit.carries) do
    local kind = carried:kind_of()
    if not same(kind, expected) and not (is_dc(circuit) and same(kind, "combiner")) then
      shall.be(format("%s is what a circuit of its role carries", carried:called()), false)
    elseif same(kind, "string") and circuit.role:is("PV source") and carried.has_converters then
      shall.be(format("What string %s gives comes out of its converters: converter output", carried:called()), false)
    elseif same(kind, "string") and circuit.role:is("converter output") and not carried.has_converters then
      shall.be(format("String %s has converters, whose output this is told to be", carried:called()), false)
    end
  end
end

local function is_among(thing, list)
  for _, one in ipairs(list) do
    if same(one:kind_of(), thing:kind_of()) and same(one, thing) then return true end
  end
  return false
end

-- What stands for others carries them: a combiner its strings, a panel what is behind its breakers.
local function is_carried_by(thing, list)
  if is_among(thing, list) then return true end
  for _, one in ipairs(list) do
    if same(one:kind_of(), "panel") then return true end
    if same(thing:kind_of(), "string") and thing.combiner and same(one:kind_of(), "combiner") and same(thing.combiner, one) then return true end
  end
  if not same(thing:kind_of(), "combiner") or thing.strings:count() < 1 then return false end
  for _, string in ipairs(thing.strings) do
    if not is_among(string, list) then return false end
  end
  return true
end

local function carries_all_of_the_panel(circuit, from)
  local buses = { from }
  if same(from:kind_of(), "panel") then buses = from.busbars end
  for _, bus in ipairs(buses) do
    for _, breaker in ipairs(bus.breakers) do
      local behind = not breaker.status:is("removed") and not breaker.duty:is("main", "spare") and breaker.serves
      if behind and (same(behind:kind_of(), "branch") or same(behind:kind_of(), "inverter")) and not is_carried_by(behind, circuit.carries) then
        shall.be(format("It carries %s, whose breaker is on %s, where it begins", behind:called(), from:called()), false)
      end
    end
  end
end

-- What comes to a disconnect goes on from it, in one circuit or in several.
local function carries_all_that_comes(from, design)
  local going, coming = {}, {}
  for _, other in ipairs(design.circuits) do
    if not other.status:is("removed") and not other.role:is("service", "feeder") then
      if other.from and same(other.from:kind_of(), "disconnect") and same(other.from, from) then table.insert(going, other) end
      if other.to and same(other.to:kind_of(), "disconnect") and same(other.to, from) then table.insert(coming, other) end
    end
  end
  for _, other in ipairs(coming) do
    for _, carried in ipairs(other.carries) do
      local goes_on = false
      for _, one in ipairs(going) do
        goes_on = goes_on or is_carried_by(carried, one.carries)
      end
      if not goes_on then shall.be(format("%s, which comes to disconnect %s, goes on from it", carried:called(), from:called()), false) end
    end
  end
end

-- What it begins at it carries, and what comes out of the circuit that it goes on from.
local function carries_what_it_begins_at(circuit, design)
  local from = circuit.from
  local kind = from and from:kind_of() or "nothing"
  if same(kind, "string") or same(kind, "branch") or same(kind, "inverter") or same(kind, "source") then
    if not is_among(from, circuit.carries) then shall.be(format("It carries %s, where it begins", from:called()), false) end
  elseif same(kind, "circuit") and same(from.role, circuit.role) then
    for _, carried in ipairs(from.carries) do
      if not is_among(carried, circuit.carries) then
        shall.be(format("It carries %s, which comes out of circuit %s", carried:called(), from:called()), false)
      end
    end
  elseif same(kind, "combiner") then
    if not is_carried_by(from, circuit.carries) then
      shall.be(format("It carries all strings of %s, where it begins", from:called()), false)
    end
  elseif (same(kind, "panel") or same(kind, "busbar")) and circuit.role:is("combined branches", "inverter output", "microinverter branch") then
    carries_all_of_the_panel(circuit, from)
  elseif same(kind, "disconnect") and not circuit.role:is("service", "feeder") then
    carries_all_that_comes(from, design)
  end
end

-- Where it goes on in another circuit, that carries it.
local function is_carried_on(circuit, to)
  if not same(to:kind_of(), "circuit") or not same(to.role, circuit.role) then return end
  for _, carried in ipairs(circuit.carries) do
    if not is_among(carried, to.carries) then
      shall.be(format("Circuit %s, in which it goes on, carries %s", to:called(), carried:called()), false)
    end
  end
end

-- Feeders are judged as those of the panels that name them.
local function is_named_as_feeder(circuit, design)
  for _, panel in ipairs(design.panels) do
    if not panel.status:is("removed") and panel.feeder and same(panel.feeder, circuit) then return end
  end
  review("It is told to be a feeder, and no panel names it as its own: the designer tells which panel it feeds, since its conductors are judged with the sources behind that")
end

-- A tap has lighter rules than a circuit to a breaker, so it must be one: of a feeder, and not at a panel's bus.
local function taps_a_feeder(circuit, kind, design)
  local tapped = circuit.taps
  shall.be("The design tells which feeder it taps", not not tapped)
  if not tapped then return end
  if same(tapped:kind_of(), "circuit") then
    local is_feeder = tapped.role:is("feeder") and not same(tapped, circuit)
    for _, panel in ipairs(design.panels) do
      if not panel.status:is("removed") and panel.feeder and same(panel.feeder, tapped) then is_feeder = true end
    end
    shall.be(format("Circuit %s, which it taps, is a feeder", tapped:called()), is_feeder)
    -- Of the feeder that the interconnection tells of a rule of its own judges what it carries beyond the tap.
    local connection = design.interconnection
    local at = connection.side:is("feeder") and connection.at
    if not (at and same(at:kind_of(), "circuit") and same(at, tapped)) then
      for _, carried in ipairs(circuit.carries) do
        if same(carried:kind_of(), "inverter") or same(carried:kind_of(), "branch") then
          review(format("%s taps feeder %s, and the interconnection tells of another place: the designer shows that the feeder carries its device and the source together, or what protects it beyond the tap", carried:called(), tapped:called()))
        end
      end
    end
    -- One that feeds a panel is told either way.
    for _, carried in ipairs(same(kind, "panel") and circuit.carries or same(kind, "busbar") and circuit.carries or {}) do
      if same(carried:kind_of(), "inverter") or same(carried:kind_of(), "branch") then
        shall.be(format("What %s gives ends at the conductors that are tapped, not at a panel", carried:called()), false)
      end
    end
  end
end

-- A bus and its panel are one place.
local function is_the_connection(to, at)
  local kind = to:kind_of()
  if same(kind, "circuit") and to.role:is("supply-side") or same(kind, "meter") then return true end
  if not at then return false end
  if same(kind, "circuit") or same(at:kind_of(), "circuit") then return same(kind, at:kind_of()) and same(to, at) end
  if same(kind, at:kind_of()) then return same(to, at) end
  local panel, bus = to, at
  if same(kind, "busbar") then panel, bus = at, to end
  if not same(panel:kind_of(), "panel") then return false end
  for _, one in ipairs(panel.busbars) do
    if same(one, bus) then return true end
  end
  return false
end

-- What it ends at is not taken out.
local function ends_at_what_stays(to, kind, design)
  if same(kind, "panel") or same(kind, "inverter") or same(kind, "circuit") then
    if to.status:is("removed") then shall.be(format("%s, where it ends, stays", to:called()), false) end
  elseif same(kind, "busbar") then
    for _, panel in ipairs(design.panels) do
      for _, bus in ipairs(panel.busbars) do
        if same(bus, to) and panel.status:is("removed") then shall.be(format("%s, where it ends, stays", panel:called()), false) end
      end
    end
  end
end

---@type plumbrule.Rule
-- What the sections are that size the way on; that a diagram shows the whole way: common practice, no source.
return {
  title = "What a circuit carries, and where it ends",
  cite = { ["2017"] = "690.8, 705.60", ["2020"] = "690.8, 705.28", ["2023"] = "690.8, 705.28" },
  about = "circuit",
  applies = function(circuit) return not circuit.status:is("removed") end,
  check = function(circuit, _, design)
    local to = circuit.to
    shall.be("The design tells where it ends", not not to)
    if not to then return end
    local kind = to:kind_of()
    ends_at_what_stays(to, kind, design)
    carries_what_its_role_says(circuit)
    carries_what_it_begins_at(circuit, design)
    is_carried_on(circuit, to)
    if circuit.role:is("feeder") then is_named_as_feeder(circuit, design) end
    if circuit.role:is("feeder tap") then taps_a_feeder(circuit, kind, design) end
    if circuit.role:is("supply-side") then
      shall.be("The design connects to the supply side", design.interconnection.side:is("supply side"))
    end
    if circuit.role:is("supply-side") and not same(kind, "disconnect") then
      shall.be("A circuit to the supply side ends where the connection is told to be", is_the_connection(to, design.interconnection.at))
    end
    if is_dc(circuit) then
      shall.be("A DC circuit ends at no panel, bus or meter", not (same(kind, "panel") or same(kind, "busbar") or same(kind, "meter")))
      for _, carried in ipairs(circuit.carries) do
        if same(kind, "inverter") and same(carried:kind_of(), "string") then
          shall.be(format("It ends at the inverter of string %s", carried:called()), carried.inverter and same(carried.inverter, to) or false)
        end
      end
    else
      shall.be("An AC circuit ends at no inverter and no combiner", not (same(kind, "inverter") or same(kind, "combiner")))
    end
    if same(kind, "meter") and to.revenue and not circuit.role:is("supply-side", "service", "feeder") then
      shall.be("Only a circuit to the supply side ends at the utility's meter", false)
    end
    local from, connection = circuit.from, design.interconnection
    if from and same(from:kind_of(), kind) and same(from, to) then shall.be("It ends elsewhere than it begins", false) end
    if connection.side:is("load side") and connection.conductors and same(connection.conductors, circuit) then
      shall.be("The conductors of the interconnection end where that is told to be", is_the_connection(to, connection.at))
    end
    begins_where_something_ends(circuit, design)
    if same(kind, "disconnect") and not has_circuit(design, "from", to) then
      review(format("No circuit of the design goes on from disconnect %s: the designer shows the conductors behind it", to:called()))
    end
    if circuit.inside_building and circuit.length_inside > circuit.length then
      review(format("%s of it are told to run inside, and the whole to be %s long: the designer tells which holds", circuit.length_inside, circuit.length))
    end
  end,
  remedy = "Show each circuit from where it begins to where it ends, and what goes on from there.",
}

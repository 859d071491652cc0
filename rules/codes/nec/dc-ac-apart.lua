-- Outputs that are combined, or go on to a tap, are outputs still.
local function carries_outputs_on(circuit)
  if not circuit.role:is("combined branches", "supply-side", "feeder tap") then return false end
  for _, carried in ipairs(circuit.carries) do
    if same(carried:kind_of(), "inverter") then return true end
  end
  return false
end

local function is_direct(circuit) return circuit.role:is("PV source", "PV output", "converter output") end

-- A circuit that is told to be in the same raceway, of the other kind; nil: none is.
local function other_kind_with(circuit)
  local host = circuit.raceway_of
  if not host then
    if circuit.raceway_guests:count() < 1 then return nil end
    host = circuit
  end
  local is_dc = is_direct(circuit)
  if not same(is_direct(host), is_dc) and not host.status:is("removed") then return host end
  for _, guest in ipairs(host.raceway_guests) do
    if not same(is_direct(guest), is_dc) and not guest.status:is("removed") then return guest end
  end
  return nil
end

---@type plumbrule.Rule
-- 2020: published that DC circuits stay apart from inverter outputs and from other systems unless a barrier parts
-- them, and that the PV system's own control circuits may be with them; 2017 (which names none of these) and 2023
-- from memory. The exception for jacketed cable, from 2020: from memory.
return {
  title = "PV circuits apart from others",
  cite = "690.31(B)",
  about = "circuit",
  applies = function(circuit)
    if circuit.status:is("removed") then return false end
    return circuit.role:is("PV source", "PV output", "converter output", "inverter output") or carries_outputs_on(circuit)
  end,
  check = function(circuit, book)
    local is_dc = is_direct(circuit)
    local other = other_kind_with(circuit)
    local is_2017 = same(book:edition("nec"), "2017")
    local is_jacketed = circuit.wiring_method:is("MC cable") or circuit.insulation:is("TC-ER")
    if (other or is_dc and circuit.shares_with:is("inverter output", "other systems")) and is_jacketed and not is_2017 then
      review("Jacketed cable may share a raceway with an inverter's output where it is identified for it and all insulation is good for the highest voltage: the inspector looks at the print on the cables")
      return
    end
    shall.be("Circuits of the other kind are in another raceway or behind a partition", circuit.dc_and_ac_separated)
    if other then
      shall.be(format("Circuit %s, of the other kind, is not in its raceway", other:called()), false)
    end
    if is_dc then
      shall.be("No inverter output and no circuit of another system is with it", not circuit.shares_with:is("inverter output", "other systems"))
      if is_2017 and circuit.shares_with:is("PV control") then
        review("Control circuits of the PV system are with it, which 2017 does not name: the authority decides whether they belong to the system")
      end
    end
  end,
  remedy = "Give PV circuits a raceway of their own, or a partition in boxes that they share.",
}

-- Open structures below every module, each apart from every enclosed building.
local function is_on_open_structures(design)
  for _, module in ipairs(design.modules) do
    if not module.plane.structure:is("carport", "shade structure") or not module.plane.detached then return false end
  end
  return true
end

-- An array on the ground whose DC circuits end before they come on or into a building.
local function ends_before_the_building(design)
  if not design.racking.mounting:is("ground") or design.circuits:count() < 1 then return false end
  for _, circuit in ipairs(design.circuits) do
    if not circuit.status:is("removed") and circuit.role:is("PV source", "PV output", "converter output")
      and (circuit.inside_building or circuit.on_roof) then
      return false
    end
  end
  return true
end

-- What is left on the conductors of a string is the sum over what its converters or devices leave.
local function leave_little(what, string, devices, each, book)
  shall.not_exceed(format("Voltage that the %s of string %s leave, all in series", what, string:called()), devices * each, book.shutdown_voltage_outside)
end

---@type plumbrule.Rule
-- 2020 let a listed hazard control system (UL 3741) stand for the 80 V; 2023 dropped the array without
-- exposed metal (2023 from memory), and spares open structures that stand apart (690.12 Exception 2) and arrays off
-- the building whose circuits end outside it (690.12(A) Exception). 2017 and 2020 speak of buildings: whether an
-- open structure that stands apart is one, the authority says. That the equipment is listed for it, and where that
-- stands, from memory.
return {
  title = "Rapid shutdown",
  cite = { ["2017"] = "690.12(A), (B), (D)", ["2020"] = "690.12(A), (B), (D)", ["2023"] = "690.12(A), (B), 690.4(B)" },
  about = "rapid_shutdown",
  applies = function(_, book, design)
    if design.modules:count() < 1 then return false end
    if not same(book:edition("nec"), "2023") then return true end
    return not is_on_open_structures(design) and not ends_before_the_building(design)
  end,
  check = function(shutdown, book, design)
    local edition = tonumber(book:edition("nec"))
    if shutdown.method:is("none") and edition < 2023 and (is_on_open_structures(design) or ends_before_the_building(design)) then
      review("Nothing is shut down: the authority decides whether its conductors are on or in a building that firefighters enter or work on")
      return
    end
    shall.be("The conductors on the building are controlled", not shutdown.method:is("none"))
    -- What the design says of the method must be there below every module.
    if shutdown.method:is("microinverters") then
      shall.be("Every module has a microinverter: there is no string", design.strings:count() < 1)
      if shutdown.device then
        shall.be("The device that it names is an inverter", same(shutdown.device:kind_of(), "inverter_model"))
      end
    elseif shutdown.method:is("converters") then
      shall.be("There are strings, which converters shut down", design.strings:count() > 0)
      for _, string in ipairs(design.strings) do
        shall.be(format("String %s has converters", string:called()), string.has_converters)
        if string.has_converters then
          if shutdown.device then
            shall.be(format("The device that it names is the converter of string %s", string:called()),
              same(shutdown.device:kind_of(), "converter_model") and same(shutdown.device, string.converter))
          end
          if not string.converter.listings:has("UL 1741") then
            review(format("The data sheet of the converters of string %s does not name UL 1741: the inspector looks whether they are listed for rapid shutdown", string:called()), string.converter)
          end
          leave_little("converters", string, round_up(string.modules:count() / string.modules_per_converter), string.converter.shutdown_voltage, book)
        end
      end
    elseif shutdown.method:is("module-level devices") and shutdown.device and not same(shutdown.device:kind_of(), "shutdown_model") then
      shall.be("What the design names is a device for modules, not a converter or an inverter", false)
    elseif shutdown.method:is("module-level devices") and shutdown.device then
      for _, string in ipairs(design.strings) do
        if not string.has_converters then leave_little("devices", string, string.modules:count(), shutdown.device.shutdown_voltage, book) end
      end
    end
    if shutdown.method:is("module-level devices", "converters", "microinverters") then
      shall.be("What does it is listed for rapid shutdown (UL 1741)", shutdown.listings:has("UL 1741") or shutdown.listings:has("UL 3741"))
    end
    shall.not_exceed("Distance outside the array at which they stay live", shutdown.boundary, book.shutdown_boundary)
    shall.not_exceed("Distance inside the building at which they stay live", shutdown.length_inside_building, book.shutdown_inside_length)
    shall.not_exceed("Voltage outside the boundary", shutdown.voltage_outside, book.shutdown_voltage_outside)
    shall.not_exceed("Time to get there", shutdown.time, book.shutdown_time)
    if shutdown.method:is("hazard control system") then
      if edition >= 2020 then
        shall.be("The hazard control system is listed to UL 3741", shutdown.listings:has("UL 3741"))
      else
        review("2017 asks for an array listed or field labeled for rapid shutdown: the inspector looks at its label")
      end
    elseif shutdown.method:is("non-exposed array") then
      shall.be("This edition knows the array without exposed metal", edition < 2023)
      review("It is told that no conductor or grounded metal is exposed: the inspector looks at all within 8 ft of the array")
    else
      shall.not_exceed("Voltage inside the boundary", shutdown.voltage_inside, book.shutdown_voltage_inside)
    end
  end,
  remedy = "Use listed module-level devices, converters, microinverters or a hazard control system.",
}

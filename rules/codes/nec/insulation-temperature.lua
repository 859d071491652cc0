-- A part of it in the wet: on a roof, underground or outside.
local function is_wet(circuit)
  return circuit.on_roof or circuit.wiring_method:is("underground raceway")
    or not circuit.inside_building or circuit.length_inside < circuit.length
end

---@type plumbrule.Rule
-- From memory. Ampacities rest on the temperature told: here it is held against that of the type. PV wire and trunk
-- cable have what their makers mark. NM and UF cable carry no more than their column of 60 °C; the higher rating
-- of what is in them may only take corrections.
return {
  title = "Temperature rating of the insulation",
  cite = { ["2017"] = "310.104(A), 334.80, 340.80", ["2020"] = "310.4(A), 334.80, 340.80", ["2023"] = "310.4(A), 334.80, 340.80" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed") and not circuit.insulation:is("PV wire", "trunk cable", "bare")
  end,
  check = function(circuit, book)
    local most = book.common_insulation_temperature
    if circuit.insulation:is("THWN") or circuit.insulation:is("XHHW") and is_wet(circuit) then most = book.wet_insulation_temperature end
    shall.not_exceed("Temperature rating told of the insulation, against that of its type", circuit.insulation_temperature, most)
    if circuit.wiring_method:is("NM cable", "UF cable") or circuit.insulation:is("NM-B", "UF-B") then
      shall.not_exceed("Temperature that the circuit counts on, against that of the cable", circuit.terminal_temperature, book.cable_temperature)
    end
  end,
  remedy = "Tell the rating that is printed on the conductors, and size them by it.",
}

local function is_in_a_string(model, design)
  for _, string in ipairs(design.strings) do
    for _, module in ipairs(string.modules) do
      if same(module.model, model) then return true end
    end
  end
  return false
end

---@type plumbrule.Rule
-- Every voltage and current rests on these figures, and a slip of the pen in one makes all of them small. That no
-- current is above the short-circuit current and no voltage above the open-circuit one is physics; shares are common
-- practice, no source.
return {
  title = "Figures of a module's data sheet against each other",
  cite = "110.3(B), 690.7(A), 690.8(A)",
  about = "module_model",
  applies = function(model, _, design)
    for _, module in ipairs(design.modules) do
      if same(module.model, model) then return true end
    end
    return false
  end,
  check = function(model, book, design)
    local low = design.site.design_low_temperature
    local cold, open_circuit = model:cold_voltage(low), model.open_circuit_voltage
    shall.be_at_least("Open-circuit voltage in the cold, against that at 25 °C", cold, open_circuit)
    local least = open_circuit * (1 + book.cold_rise_least * ((celsius(25) - low) / delta_C))
    if cold < least then
      review(format("In the cold of %s its voltage comes to %.2f V only, and modules usually to %.2f V or more: the designer looks whether the coefficient is meant", low, cold / V, least / V))
    end
    if not is_in_a_string(model, design) then return end
    shall.be_at_least("Open-circuit voltage against that at maximum power", open_circuit, model.power_voltage)
    shall.be_at_least("Short-circuit current against that at maximum power", model.short_circuit_current, model.power_current)
    local power = model.power_voltage * model.power_current
    if power > model.rated_power * (1 + book.figures_apart) or power < model.rated_power * (1 - book.figures_apart) then
      review(format("Voltage and current at maximum power make %.2f W, and its rated power is %s: the designer looks which figure is meant", power / W, model.rated_power))
    end
  end,
  remedy = "Take the figures from the data sheet, at standard test conditions.",
}

---@type plumbrule.Rule
-- 690.12(D) (2023 has the labels there, and 690.4(B) names the equipment), and 690.33 for the connectors: from memory.
return {
  title = "Modules against their shutdown device",
  cite = { ["2017"] = "690.12(D), 690.33, 110.3(B)", ["2020"] = "690.12(D), 690.33, 110.3(B)", ["2023"] = "690.4(B), 690.33, 110.3(B)" },
  about = "rapid_shutdown",
  applies = function(shutdown) return shutdown.method:is("module-level devices") end,
  check = function(shutdown, _, design)
    local device = shutdown.device
    shall.be("The design names the device", not not device)
    if not device then return end
    local is_one = same(device:kind_of(), "shutdown_model")
    shall.be("What it names is a device for modules, not a converter or an inverter", is_one)
    if not is_one then return end
    shall.be("Listed as part of a rapid shutdown system (UL 1741)", device.listings:has("UL 1741"))
    local seen -- each model once
    for _, string in ipairs(design.strings) do
      for _, module in ipairs(string.modules) do
        if not seen or not same(seen, module.model) then
          seen = module.model
          local cold = seen:cold_voltage(design.site.design_low_temperature)
          shall.not_exceed("Open-circuit voltage of a module in the cold", cold, device.maximum_input_voltage)
          shall.not_exceed("Short-circuit current of a module", seen.short_circuit_current, device.maximum_current)
          shall.meet_one_of {
            { "connectors of one kind", function()
                shall.be_equal("Connector of a module, against that of the device", seen.connector, device.connector)
              end },
            { "a pair listed together", function()
                shall.be("The design says that the two are listed for each other", string.connectors_listed_together)
              end },
          }
        end
      end
      shall.not_exceed("Largest voltage of the string", string:maximum_voltage(design.site.design_low_temperature), device.maximum_system_voltage)
    end
  end,
  remedy = "Use a device that is rated for the module and the string, with connectors listed for the module's.",
}

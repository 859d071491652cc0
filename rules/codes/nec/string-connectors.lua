---@type plumbrule.Rule
-- Letters of 690.33 from memory.
return {
  title = "Connectors of a string mated as listed",
  cite = { ["2017"] = "690.33, 110.3(B)", ["2020"] = "690.33(C), 110.3(B)", ["2023"] = "690.33(C), 110.3(B)" },
  about = "string",
  check = function(string)
    if string.modules:count() < 1 then shall.be("The string has modules", false) end
    local seen -- each model once
    for _, module in ipairs(string.modules) do
      if not seen or not same(seen, module.model) then
        seen = module.model
        if string.has_converters then
          shall.be_equal("Connector of a module, against that of its converter", seen.connector, string.converter.connector)
        else
          shall.be_equal("Connector of a module, against that of the first in the string", seen.connector, string.modules[1].model.connector)
        end
      end
    end
  end,
  remedy = "Mate connectors of one make and type, or a pair that is listed together.",
}

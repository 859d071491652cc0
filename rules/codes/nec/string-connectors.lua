---@type plumbrule.Rule
-- Letters of 690.33 from memory, as that UL 6703 is the standard of the connectors.
return {
  title = "Connectors of a string mated as listed",
  cite = { ["2017"] = "690.33, 110.3(B)", ["2020"] = "690.33(C), 110.3(B)", ["2023"] = "690.33(C), 110.3(B)" },
  about = "string",
  check = function(string)
    local function mated(what, connector, other)
      shall.meet_one_of {
        { "connectors of one kind", function() shall.be_equal(what, connector, other) end },
        { "a pair listed together", function()
            shall.be("The design says that the two are listed for each other", string.connectors_listed_together)
          end },
      }
    end
    local function listed(model)
      if not model.listings:has("UL 6703") then
        review(format("The data sheet of %s names no listing of its connectors: the inspector looks for UL 6703 on them or in the maker's papers", model:called()))
      end
    end
    if string.modules:count() < 1 then shall.be("The string has modules", false) end
    local seen -- each model once
    for _, module in ipairs(string.modules) do
      if not seen or not same(seen, module.model) then
        seen = module.model
        listed(seen)
        if string.has_converters then
          mated("Connector of a module, against that of its converter", seen.connector, string.converter.connector)
        else
          mated("Connector of a module, against that of the first in the string", seen.connector, string.modules[1].model.connector)
        end
      end
    end
    if string.has_converters then listed(string.converter) end
  end,
  remedy = "Mate connectors of one make and type, or a pair that is listed together.",
}

---@type plumbrule.Rule
-- Letters of 690.33 from memory.
return {
  title = "Connectors of modules and microinverters mated as listed",
  cite = { ["2017"] = "690.33, 110.3(B)", ["2020"] = "690.33(C), 110.3(B)", ["2023"] = "690.33(C), 110.3(B)" },
  about = "branch",
  check = function(branch)
    local seen -- each model once
    for _, module in ipairs(branch.modules) do
      if not seen or not same(seen, module.model) then
        seen = module.model
        shall.be_equal("Connector of a module, against that of its microinverter", seen.connector, branch.microinverter.connector)
      end
    end
  end,
  remedy = "Mate connectors of one make and type, or a pair that is listed together.",
}

---@type plumbrule.Rule
-- 690.45: not below 14 AWG; smaller than 6 AWG only where protected (690.46, 250.120(C): from memory).
return {
  title = "Equipment grounding conductor of the array",
  cite = { ["2017"] = "690.45, 690.46, 250.120(C)", ["2020"] = "690.45, 690.46, 250.120(C)", ["2023"] = "690.45, 690.46, 250.120(C)" },
  about = "grounding",
  applies = function(_, _, design) return design.modules:count() > 0 end,
  check = function(grounding)
    local section = calc.conductor_area { size = grounding.array_egc_size }
    shall.be_at_least("Section in kcmil (14 AWG is the least)", section, calc.conductor_area { size = "14 AWG" })
    if not grounding.array_egc_protected then
      shall.be_at_least("Section of an unprotected one in kcmil (6 AWG is the least)", section, calc.conductor_area { size = "6 AWG" })
    end
  end,
  remedy = "Protect the conductor, or use 6 AWG.",
}

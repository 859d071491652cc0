-- What 2017 lists beside the voltage, and the section number of 2023: from memory.
local function gives(text, unit) -- a digit, a blank and the unit, as in "32 A"
  local size = string.len(unit)
  for i = 1, string.len(text) do
    local after = string.upper(string.sub(text, i + size + 2, i + size + 2))
    if tonumber(string.sub(text, i, i)) and same(string.sub(text, i + 1, i + size + 1), " " .. unit)
      and (same(after, "") or not string.contains("ABCDEFGHIJKLMNOPQRSTUVWXYZ", after)) then
      return true
    end
  end
  return false
end

local function volts_on(text) -- the largest number before " V", none where there is none
  local most, digits = nil, ""
  for i = 1, string.len(text) do
    local letter = string.sub(text, i, i)
    if tonumber(letter) or same(letter, ".") and string.len(digits) > 0 then
      digits = digits .. letter
    else
      local number = gives(string.sub(text, i - 1, i + 2), "V") and tonumber(digits)
      if number and (not most or number > most) then most = number end
      digits = ""
    end
  end
  return most
end

---@type plumbrule.Rule
return {
  title = "Label: largest DC voltage",
  cite = { ["2017"] = "690.53", ["2020"] = "690.53", ["2023"] = "690.7(D)" },
  about = "design",
  applies = function(design) return design.strings:count() > 0 end,
  check = function(design, book)
    local labels = 0
    local most = 0 * V
    for _, string in ipairs(design.strings) do
      most = largest(most, string:maximum_voltage(design.site.design_low_temperature))
    end
    for _, label in ipairs(design.labels) do
      if label.kind:is("DC maximum voltage") then
        labels = labels + 1
        shall.be("It gives volts", gives(label.text, "V"))
        local volts = volts_on(label.text)
        if volts then shall.be_at_least("Voltage that it gives, against the largest of any string", volts * V, most) end
        shall.be("At the DC disconnect, the inverter or what stands between", label.place:is("PV disconnect", "inverter", "combiner"))
        if same(book:edition("nec"), "2017") then
          shall.be("It gives amperes, too (2017)", gives(label.text, "A"))
        end
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the largest DC voltage at the DC disconnect or the inverter.",
}

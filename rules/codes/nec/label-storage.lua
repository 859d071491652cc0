-- From memory: 2017 asks for short-circuit current and arc flash too; dwellings are spared those from 2020.
-- The least and the largest number in whichever way of writing the unit: "32 A", "240 VAC", "480V".
local function volts_on(text) return string.numbers_before(string.upper(text), "V", "VDC", "VAC", "VOLT", "VOLTS") end
local function amperes_on(text) return string.numbers_before(string.upper(text), "A", "AMP", "AMPS", "AMPERES", "ADC", "KA") end

---@type plumbrule.Rule
return {
  title = "Label: disconnect of the storage",
  cite = { ["2017"] = "706.7(D) (from memory)", ["2020"] = "706.15(C) (from memory)", ["2023"] = "706.15(C) (from memory)" },
  about = "design",
  applies = function(design)
    for _, source in ipairs(design.other_sources) do
      if source.kind:is("storage") then return true end
    end
    return false
  end,
  check = function(design, book)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("storage") then
        labels = labels + 1
        shall.be("At the storage's disconnect", label.place:is("storage disconnect"))
        shall.be("It says that it is the storage's", string.contains(string.upper(label.text), "STORAGE"))
        shall.be("It gives volts", volts_on(label.text) and true or false)
        if same(book:edition("nec"), "2017") then
          shall.be("It gives the short-circuit current, too (2017)", amperes_on(label.text) and true or false)
        end
      elseif label.kind:is("source directory") then
        shall.be("The directory of sources names the storage", string.contains(string.upper(label.text), "STORAGE"))
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the storage's disconnect with its nominal voltage, and name the storage in the directory at the service.",
}

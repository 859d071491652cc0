local function count(...) return select("#", ...) end

return {
  title = "Words for texts and lists",
  cite = "none",
  about = "label",
  applies = function(label) return label.kind:is("PV disconnect", "rapid shutdown", "inverter", "AC disconnect", "source directory") end,
  check = function(label, _, design)
    local text = string.lower(label.text)
    shall.not_exceed(format("Letters of %s, %d %% of %.1f", label, string.len(text), 60), string.len(text), 60)
    shall.be_equal("Small again", string.lower(string.upper(text)), text)
    should.be_equal("First letter", string.sub(text, 1, 1), "w")
    should.be("It warns", string.contains(text, "warning"))
    shall.be_equal("Kind of a word", type(label.kind), "word")
    shall.be_equal("Kinds of all else", table.concat({ type(1), type("a"), type({}), type(design), type(label), type(1 * ft) }, ", "),
      "number, string, table, design, label, quantity")
    shall.be_equal("A number in a text", tonumber("12.5") + 0, 12.5)
    shall.be("None in another", type(tonumber("12 ft")) < "nim")
    local least, most = string.numbers_before("600 V, 12.5 V; 1000 VA, .5 V x .V 7 xV 700V, 0.2VA  8", "V")
    shall.be_equal("The least before a unit", least, 0.5)
    shall.be_equal("The largest before it, without a blank", most, 700)
    shall.be_equal("None before another", type(string.numbers_before("7  A 3 Ah 4Ah A", "A")), "nil")
    local low, high = string.numbers_before("240 VAC, 600V, 32 A", "A", "V", "VAC", "VDC")
    shall.be("Before one of several units", same(low, 32) and same(high, 600))
    local volts = string.numbers_before(label.text, "V")
    shall.be_at_least("Volts on the label", volts or 0, 100)
    shall.be_equal("Said as a text", tostring(label.kind), label.kind)
    shall.be_equal("How many", count(1, 2, design.labels:count()), 3)
    local list = {}
    for i, other in ipairs(design.labels) do table.insert(list, { name = other:called(), size = string.len(other:called()), at = i }) end
    table.sort(list, function(a, b) return a.size > b.size end)
    local names = {}
    for _, entry in ipairs(list) do table.insert(names, entry.name) end
    shall.be_more_than("All names, the longest first", string.len(table.concat(names, " ")), 100)
    local last = table.remove(names)
    shall.be_equal("The last of the shortest", last, design.labels[list[#list].at]:called())
    local numbers = { 3, 1, label.letter_height / inch, 2 }
    table.sort(numbers)
    shall.be_at_least("The least of four", numbers[1], 0.375)
    shall.be_equal("Its place among the kinds", label:kind_of(), "label")
  end,
}

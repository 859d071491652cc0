---@type plumbrule.Rule
-- 2017 knows one wording, 2020 two; 2017 and 2023 from memory.
return {
  title = "Label: DC raceways",
  cite = { ["2017"] = "690.31(G)(3), (4)", ["2020"] = "690.31(D)(2)", ["2023"] = "690.31(D)(2)" },
  about = "design",
  applies = function(design)
    for _, circuit in ipairs(design.circuits) do
      if not circuit.status:is("removed") and circuit.role:is("PV source", "PV output", "converter output")
        and not circuit.wiring_method:is("free air") then
        return true
      end
    end
    return false
  end,
  check = function(design, book)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("DC raceway") then
        labels = labels + 1
        local text = string.upper(label.text)
        local says = string.contains(text, "PHOTOVOLTAIC POWER SOURCE")
        if not same(book:edition("nec"), "2017") then says = says or string.contains(text, "SOLAR PV DC CIRCUIT") end
        shall.be("It has the words that the edition knows", says)
        shall.be("On the raceway", label.place:is("DC raceway"))
        shall.be_at_least("Height of its letters", label.letter_height, book.raceway_label_letters)
        shall.be("White on red", label.color:is("white on red"))
        -- From memory (fire codes).
        shall.be("Reflective", label.reflective)
        shall.not_exceed("Distance from one to the next", label.spacing, book.raceway_label_spacing)
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the raceway every 10 ft, in boxes and at turns.",
}

---@type plumbrule.Rule
-- 2017 and 2023 partly from memory; what 2023 asks of colors was not seen and is not judged.
return {
  title = "Label: rapid shutdown switch",
  cite = { ["2017"] = "690.56(C)(3)", ["2020"] = "690.56(C)(2)", ["2023"] = "690.12(D)(2)" },
  about = "design",
  applies = function(design)
    local initiator = design.modules:count() > 0 and design.rapid_shutdown.initiator
    return initiator and initiator.role:is("rapid shutdown") or false
  end,
  check = function(design, book)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("rapid shutdown switch") then
        labels = labels + 1
        shall.be("It says RAPID SHUTDOWN SWITCH FOR SOLAR PV SYSTEM", string.contains(string.upper(label.text), "RAPID SHUTDOWN SWITCH"))
        shall.be_at_least("Height of its letters", label.letter_height, book.shutdown_title_letters)
        shall.not_exceed("Distance from the switch", label.distance, book.switch_label_distance)
        shall.be("Reflective", label.reflective)
        if not same(book:edition("nec"), "2023") then
          shall.be("White on red", label.color:is("white on red"))
        end
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Put the label within 3 ft of the switch.",
}

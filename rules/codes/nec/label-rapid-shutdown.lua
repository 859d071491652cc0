---@type plumbrule.Rule
-- 2020: title 3/8 in black on yellow, the rest 3/16 in black on white. 2017: colors by the kind of array
-- boundary (from memory; sources conflict), not judged. 2023 names no colors.
return {
  title = "Label: rapid shutdown of the building",
  cite = { ["2017"] = "690.56(C)", ["2020"] = "690.56(C)", ["2023"] = "690.12(D)" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 and not design.rapid_shutdown.method:is("none") end,
  check = function(design, book)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("rapid shutdown") then
        labels = labels + 1
        shall.be("It says SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN", string.contains(string.upper(label.text), "EQUIPPED WITH RAPID SHUTDOWN"))
        shall.be_at_least("Height of its title", label.letter_height, book.shutdown_title_letters)
        shall.be("At the service, or where one sees it readily", label.place:is("service equipment", "meter", "main panel"))
        -- 3 ft: IFC 1204.5, from memory.
        should.not_exceed("Distance from the service disconnect", label.distance, book.placard_distance)
        if same(book:edition("nec"), "2020") then
          shall.be("Title black on yellow", label.color:is("black on yellow"))
        end
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Order the placard with the words, the letters and the colors of the edition.",
}
